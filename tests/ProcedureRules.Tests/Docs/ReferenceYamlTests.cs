using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Language.Compiling;
using ProcedureRules.Language.Syntax;
using ProcedureRules.Packs;
using ProcedureRules.Scheduling;
using ProcedureRules.Shapes;
using ProcedureRules.Yaml;
using Xunit;

namespace ProcedureRules.Tests.Docs;

/// <summary>The YAML of the reference for trainers: it loads, it compiles, and it shows all there is.</summary>
public class ReferenceYamlTests
{
    private static ReferencePage Page => ReferencePage.Instance;

    [Fact]
    public void Pieces_JoinedToOnePack_LoadAndCompileWithoutComplaint()
    {
        Assert.Equal("", Page.Complaints.ToSnippets());
        Assert.True(Page.Rules.AuthoredCount >= 20);
    }

    [Fact]
    public void Walk_PackSheetAndOrder_LoadWithoutComplaint()
    {
        var bag = new DiagnosticBag();
        var packs = PackReader.Read([new SourceFile("wipers.yaml", Page.WalkPack)], bag);
        var rules = RuleCompiler.Compile(packs, null, bag);
        var situation = new SheetReader(packs.Vocabulary, packs.Archetypes)
            .Read(new SourceFile("van.yaml", Page.WalkVehicle), new SourceFile("job.yaml", Page.WalkOrder), bag)!;
        var records = new InferenceSession(rules).Infer(situation, cancellationToken: TestContext.Current.CancellationToken).Records;

        Assert.Equal("", bag.ToSnippets());
        var steps = records.SelectMany(record => record.Effects).Select(effect => effect.Atom).OfType<Atom.Occurs>().Select(atom => atom.Step.Operation.Name);
        Assert.Equal(packs.Vocabulary.Operations.Keys.Order(), steps.Distinct().Order());
    }

    [Fact]
    public void Blocks_EveryYamlBlock_IsWellFormed()
    {
        var bag = new DiagnosticBag();
        foreach (var block in ReferencePage.Page.Blocks.Where(block => block.Language == "yaml"))
            YamlReader.Read(new SourceFile($"README.md, line {block.Line}", block.Text), bag);

        Assert.Equal("", bag.ToSnippets());
    }

    [Fact]
    public void Shop_OfThePage_IsReadWithoutMistakes()
    {
        var bag = new DiagnosticBag();

        var shop = new WorkshopReader(Page.Packs.Vocabulary, bag).Read(new SourceFile("shop.yaml", Page.Shop));

        Assert.Equal("", bag.ToSnippets());
        Assert.Equal(2, shop!.Technicians);
    }

    [Fact]
    public void Pieces_EveryKey_IsShown()
    {
        var used = Keys(Page.Pack, PackShapes.Pack);
        used.UnionWith(Keys(Page.Vehicle, SheetShapes.Vehicle));
        used.UnionWith(Keys(Page.Order, WorkOrderShapes.WorkOrder));
        used.UnionWith(Keys(Page.Shop, ShopShapes.Shop));
        var all = new[] { PackShapes.Pack, SheetShapes.Vehicle, WorkOrderShapes.WorkOrder, ShopShapes.Shop }
            .SelectMany(ShapeWalk.Maps).Distinct()
            .SelectMany(map => map.Fields.Select(field => ShapeWalk.Words(map, field.Name)));

        // What may stand beside every conclusion is shown beside some.
        var shared = new[] { ": if_unknown", ": at" };
        Assert.DoesNotContain(all.Except(used), key => !key.EndsWith(": accept", StringComparison.Ordinal)
            && (!key.StartsWith("the conclusion", StringComparison.Ordinal) || !shared.Any(key.EndsWith)));
        Assert.All(shared, end => Assert.Contains(used, key => key.EndsWith(end, StringComparison.Ordinal) && key.StartsWith("the conclusion", StringComparison.Ordinal)));
    }

    [Fact]
    public void Pieces_EveryConditionThatBinds_IsShownAndInTheTable()
    {
        var authored = Page.Rules.Rules.Take(Page.Rules.AuthoredCount).ToList();
        var shown = authored.SelectMany(rule => rule.Patterns).Select(pattern => pattern.Predicate.Sort).ToHashSet();
        var rows = ReferencePage.Page.Lines().Select(line => line.Line).Where(line => line.StartsWith("| `s ", StringComparison.Ordinal)).ToList();

        Assert.Empty(ConditionParser.Verbs.Values.Append(PredicateSort.Related).Append(PredicateSort.Job).Except(shown));
        Assert.Equal(ConditionParser.Verbs.Keys.Order(), rows.Select(row => row.Split(' ', '`')[3]).Order());
        Assert.Contains(authored, rule => rule.Moments.Any());
        Assert.Contains(authored, rule => rule.AtStart.Any());
        Assert.Contains(authored, rule => rule.Tests.Any());
    }

    private static HashSet<string> Keys(string text, Shape shape)
    {
        var bag = new DiagnosticBag();
        var node = YamlReader.Read(new SourceFile("page.yaml", text), bag);
        Assert.Equal("", bag.ToSnippets());
        return ShapeWalk.KeysUsed(node!, shape);
    }
}
