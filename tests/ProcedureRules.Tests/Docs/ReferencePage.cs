using ProcedureRules.Beliefs;
using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Language.Compiling;
using ProcedureRules.Packs;

namespace ProcedureRules.Tests.Docs;

/// <summary>The reference for trainers, and what its examples come to when they are read, compiled and inferred from.</summary>
internal sealed class ReferencePage
{
    public const string Walk = "Your first rule";

    /// <summary>The walk on from there: its blocks are for the folder of the first walk, in their order.</summary>
    public const string Proof = "See it fail, make it pass";
    private const string SheetSection = "A vehicle sheet";

    public static readonly MarkdownPage Page = MarkdownPage.Load("rules", "README.md");
    private static readonly Lazy<ReferencePage> Read = new(() => new ReferencePage());

    private ReferencePage()
    {
        var yaml = Page.Blocks.Where(block => block.Language == "yaml" && block.Section != Proof && block.FirstKey != "scenario").ToList();
        var sheets = yaml.Where(block => block.FirstKey is "vehicle" or "work_order" or "shop").ToList();
        Pack = PackFragments.Join(yaml.Except(sheets).Where(block => block.Section != Walk).Select(block => block.Text));
        WalkPack = PackFragments.Join(yaml.Except(sheets).Where(block => block.Section == Walk).Select(block => block.Text));
        WalkVehicle = sheets.Single(block => block.Section == Walk && block.FirstKey == "vehicle").Text;
        WalkOrder = sheets.Single(block => block.Section == Walk && block.FirstKey == "work_order").Text;
        Vehicle = sheets.First(block => block.Section == SheetSection).Text;
        Archetype = sheets.Last(block => block.Section == SheetSection).Text;
        Order = sheets.Single(block => block.Section == "A work order").Text;
        Shop = sheets.Single(block => block.Section == "A shop").Text;

        Packs = PackReader.Read(
            [new SourceFile("bottom_end.yaml", Pack)],
            Complaints,
            new Dictionary<string, SourceFile> { ["rear_drive"] = new("archetypes/rear_drive.yaml", Archetype) });
        Rules = RuleCompiler.Compile(Packs, null, Complaints);
        Situation = new SheetReader(Packs.Vocabulary, Packs.Archetypes)
            .Read(new SourceFile("demo-van.yaml", Vehicle), new SourceFile("order.yaml", Order), Complaints)!;
        Beliefs = BeliefNetwork.Build(new InferenceSession(Rules).Infer(Situation), Complaints)!.Initial;
    }

    public static ReferencePage Instance => Read.Value;

    /// <summary>The pack that the pieces of the page make.</summary>
    public string Pack { get; }

    public string Vehicle { get; }

    public string Archetype { get; }

    public string Order { get; }

    public string Shop { get; }

    public string WalkPack { get; }

    public string WalkVehicle { get; }

    public string WalkOrder { get; }

    public PackSet Packs { get; }

    public RuleBase Rules { get; }

    public Situation Situation { get; }

    public BeliefState Beliefs { get; }

    public DiagnosticBag Complaints { get; } = new();
}
