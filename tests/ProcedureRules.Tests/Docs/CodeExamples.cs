using System.Text;
using ProcedureRules.Beliefs;
using ProcedureRules.Choosing;
using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Language.Compiling;
using ProcedureRules.Packs;
using ProcedureRules.Planning;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;
using ProcedureRules.Scheduling;
using ProcedureRules.Testing;
using ProcedureRules.Testing.Approving;
using ProcedureRules.Yaml;

namespace ProcedureRules.Tests.Docs;

/// <summary>Runs the example of a code: puts it where it belongs, beside the pack of the reference, and reads it.</summary>
internal static class CodeExamples
{
    /// <summary>A sheet with what the examples of sheets speak of; one that names its own parts gets none.</summary>
    private const string Parts = "parts: {starter: starter, oil_pan: oil_pan, dust_cover: dust_cover, left_mount: engine_mount, right_mount: engine_mount}\n";

    private const string MountsCoverEachOther = "  - covers(left_mount, right_mount)\n  - covers(right_mount, left_mount)\n";

    private static readonly Dictionary<string, Action<string, DiagnosticBag>> Arranged = new()
    {
        ["PR0001"] = (example, bag) => InFile($"work_order: x\njobs: [change_oil]\n{example}\n", path => new SheetReader(Vocabulary, ReferencePage.Instance.Packs.Archetypes).ReadFile(path, bag)),
        ["PR0002"] = (example, bag) => InFile(Encoding.Latin1.GetBytes(example), path => SourceFiles.TryLoad(path, bag)),
        ["PR0206"] = (example, bag) => PackReader.Read([File($"pack: example\nversion: 1.0.0\nabout: x\n{example}\n")], bag),
        ["PR0219"] = (example, bag) => PackReader.Read([new SourceFile("bottom_end.yaml", ReferencePage.Instance.Pack), File(example)], bag),
        ["PR0311"] = CompileWithFailingFunction,
        ["PR0580"] = ReadShop,
        ["PR0581"] = ReadShop,
        ["PR0582"] = ReadShop,
        ["PR0906"] = (example, bag) => bag.AddRange(ApprovalScope.Of([example.Split('"')[1]]).Mistakes([])),
        ["PR0601"] = (example, bag) => bag.AddRange(Infer(example, bag, budget: 5).Diagnostics),
        ["PR0650"] = (example, bag) => BeliefNetwork.Build(Infer(example, bag, relations: MountsCoverEachOther), bag),
        ["PR0701"] = (example, bag) => Plan(example, bag, PlannerOptions.Default),
        ["PR0702"] = (example, bag) => Plan(example, bag, PlannerOptions.Default),
        ["PR0703"] = (_, bag) => Plan("", bag, PlannerOptions.Default with { MostMoments = 2 }),
        ["PR0705"] = (_, bag) => Plan("", bag, PlannerOptions.Default with { MostHypotheses = 0 }),
        ["PR0706"] = (example, bag) => ChoiceReader.Find(ChoiceReader.Read(example["--choose ".Length..], bag)!, BeliefNetwork.Build(Infer("", bag), bag)!, bag),
        ["PR0707"] = OpenOrder,
    };

    private static readonly HashSet<string> RuleKeys = ["rule", "for", "when", "then", "because", "basis", "if_unknown"];
    private static readonly HashSet<string> TableKeys = ["inputs", "output", "rows"];

    private static Vocabulary Vocabulary => ReferencePage.Instance.Packs.Vocabulary;

    /// <summary>What is complained about.</summary>
    public static DiagnosticBag Run(DiagnosticCode code)
    {
        var bag = new DiagnosticBag();
        var example = Spelt(code.Example);
        if (Arranged.TryGetValue(code.Code, out var arranged))
            arranged(example, bag);
        else if (code.Code.StartsWith("PR00", StringComparison.Ordinal))
            YamlReader.Read(File(example), bag);
        else if (code.Code.StartsWith("PR05", StringComparison.Ordinal))
            ReadSheet(example, bag);
        else if (code.Code.StartsWith("PR09", StringComparison.Ordinal))
            ReadScenario(example, bag);
        else if (code.Code.StartsWith("PR08", StringComparison.Ordinal))
            Lint(example, bag);
        else
            Compile(InPack(example), bag);
        return bag;
    }

    /// <summary>Writes out what an example can only hint at: what goes on and on, and what cannot be seen.</summary>
    private static string Spelt(string example) => example
        .Replace("... [", new string('[', 70), StringComparison.Ordinal).Replace("] ...", new string(']', 70), StringComparison.Ordinal)
        .Replace("... (", new string('(', 70), StringComparison.Ordinal).Replace(") ...", new string(')', 70), StringComparison.Ordinal)
        .Replace('␀', '\0');

    private static void ReadShop(string example, DiagnosticBag bag) => new WorkshopReader(Vocabulary, bag).Read(File($"shop: x\n{example}\n"));

    private static string InPack(string example)
    {
        var key = example.Split(':')[0];
        var body = example.Length == 0 ? ""
            : RuleKeys.Contains(key) ? Rule(example)
            : TableKeys.Contains(key) ? Table(example)
            : PackShapes.Pack.Field(key) is null ? Rule($"when: [ '{example.Replace("'", "''", StringComparison.Ordinal)}' ]")
            : example;
        var uses = body.StartsWith("uses:", StringComparison.Ordinal) ? "" : "uses: [bottom_end]\n";
        return $"pack: example\nversion: 1.0.0\nabout: x\n{uses}{body}\n";
    }

    private static string Rule(string example) => "rules:\n" + Entry(
        example, ("rule", "an example"), ("then", "[{notice: x}]"), ("because", "x"), ("basis", "common practice"));

    private static string Table(string example) => "tables:\n" + Entry(
        example, ("table", "an example"), ("inputs", "[exhaust.rust]"), ("output", "exhaust.soak"), ("because", "x"), ("basis", "common practice"));

    // A list entry with the example's keys, and those that have to be there and are not.
    private static string Entry(string example, params (string Key, string Value)[] due)
    {
        var lines = example.Split('\n').ToList();
        var missing = due.Where(entry => !lines.Exists(line => line.StartsWith(entry.Key + ":", StringComparison.Ordinal)));
        return "  - " + string.Join("\n    ", missing.Select(entry => $"{entry.Key}: {entry.Value}").Concat(lines));
    }

    private static RuleBase Compile(string pack, DiagnosticBag bag, FunctionRegistry? functions = null)
    {
        var packs = PackReader.Read([new SourceFile("bottom_end.yaml", ReferencePage.Instance.Pack), File(pack)], bag);
        return RuleCompiler.Compile(packs, functions, bag);
    }

    private static InferenceResult Infer(string example, DiagnosticBag bag, int budget = InferenceSession.DefaultBudget, string relations = "")
    {
        var rules = Compile(InPack(example), bag);
        var page = ReferencePage.Instance;
        // The smallest job: what is stuck is found without trying thousands of orders.
        var order = page.Order.Replace("relations:\n", $"relations:\n{relations}", StringComparison.Ordinal)
            .Replace("- replace_oil_pan", "- change_oil", StringComparison.Ordinal);
        var situation = new SheetReader(rules.Vocabulary, page.Packs.Archetypes).Read(File(page.Vehicle), File(order), bag)!;
        return new InferenceSession(rules).Infer(situation, budget);
    }

    private static void Plan(string example, DiagnosticBag bag, PlannerOptions options) =>
        bag.AddRange(Planner.Plan(BeliefNetwork.Build(Infer(example, bag), bag)!.Initial, options).Diagnostics);

    private static void OpenOrder(string example, DiagnosticBag bag)
    {
        var engine = ProcedureEngine.Load([new SourceFile("bottom_end.yaml", ReferencePage.Instance.Pack)]).Engine!;
        var situation = new SheetReader(engine.Vocabulary, engine.Archetypes).Read(File($"vehicle: x\n{Parts}"), File($"work_order: x\njobs: [change_oil]\n{example}\n"), bag)!;
        bag.AddRange(engine.Open(situation).Diagnostics);
    }

    private static void ReadSheet(string example, DiagnosticBag bag)
    {
        if (!YamlLooksLikeMapping(example))
        {
            StatementReader.Apply(example, ReferencePage.Instance.Situation, Source.Measured, bag);
            return;
        }

        var isOrder = example.StartsWith("jobs:", StringComparison.Ordinal);
        var parts = example.StartsWith("parts:", StringComparison.Ordinal) ? "" : Parts;
        var sheet = $"vehicle: x\n{parts}{(isOrder ? "" : example)}\n";
        var order = isOrder ? File($"work_order: x\n{example}\n") : null;
        new SheetReader(Vocabulary, new Dictionary<string, SourceFile>()).Read(File(sheet), order, bag);
    }

    // Only the code that is about it has an example that expects nothing.
    private static void ReadScenario(string example, DiagnosticBag bag)
    {
        var expect = example.Contains("{drop}", StringComparison.Ordinal) ? "expect: [{plan: goes_on}]\n" : "";
        var engine = ProcedureEngine.Load([new SourceFile("bottom_end.yaml", ReferencePage.Instance.Pack)]).Engine!;
        var isApproved = example.StartsWith("== ", StringComparison.Ordinal);
        var scenario = File($"scenario: x\nvehicle: {{{Parts.TrimEnd()}}}\njobs: [change_oil]\n{(isApproved ? "expect: [{plan: goes_on}]" : example)}\n{expect}");
        bag.AddRange(ScenarioSet.Read(engine, [scenario], isApproved ? [new SourceFile(ApprovedFile.PathFor(scenario.Path), example)] : []).Diagnostics);
    }

    // What the pack of the reference is to be told is not the example's.
    private static void Lint(string example, DiagnosticBag bag)
    {
        var loaded = ProcedureEngine.Load([new SourceFile("bottom_end.yaml", ReferencePage.Instance.Pack), File(InPack(example))]);
        bag.AddRange(loaded.Diagnostics);
        if (loaded.Engine is { } engine) bag.AddRange(PackLint.Of(engine).Where(finding => finding.Span.File!.Path == "example.yaml"));
    }

    private static bool YamlLooksLikeMapping(string example) =>
        SheetShapes.Vehicle.Field(example.Split(':')[0]) is not null || WorkOrderShapes.WorkOrder.Field(example.Split(':')[0]) is not null;

    private static void CompileWithFailingFunction(string example, DiagnosticBag bag)
    {
        var function = new FunctionDefinition
        {
            Name = "spring_rate",
            Parameters = [new("travel", Dimension.Length)],
            Returns = Dimension.Number,
            Documentation = "Fails.",
            Implementation = _ => throw new InvalidOperationException("no data"),
        };
        Compile(InPack(example), bag, FunctionRegistry.Standard.With(function).WithFailures(bag.Add));
    }

    private static SourceFile File(string text) => new("example.yaml", text);

    private static void InFile(string text, Action<string> read) => InFile(Encoding.UTF8.GetBytes(text), read);

    private static void InFile(byte[] text, Action<string> read)
    {
        var path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());
        System.IO.File.WriteAllBytes(path, text);
        try
        {
            read(path);
        }
        finally
        {
            System.IO.File.Delete(path);
        }
    }
}
