using System.Collections.Concurrent;
using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Packs;
using ProcedureRules.Shapes;
using ProcedureRules.Testing.Expectations;
using ProcedureRules.Yaml;

namespace ProcedureRules.Testing.Scenarios;

/// <summary>Reads scenarios into cases, one for each row; everything that is wrong in a file is told at once.</summary>
internal sealed class ScenarioReader(ProcedureEngine engine, bool withExpectations = true)
{
    private static readonly string[] OfTheScenario = ["scenario", "vehicle", "shop", "start", "expect", "next", "rows"];
    private readonly SheetReader _sheets = new(engine.Vocabulary, engine.Archetypes);
    private readonly RuleTexts _texts = new(engine.Rules);
    private readonly ConcurrentDictionary<string, (SheetLayer? Layer, IReadOnlyList<Diagnostic> Mistakes)> _read = new(StringComparer.Ordinal);

    /// <summary>The cases of a file.</summary>
    public IReadOnlyList<ScenarioCase> Read(SourceFile file, DiagnosticBag bag)
    {
        if (YamlReader.Read(file, bag) is not { } node || !FileSorts.MayBe(node, "scenario", bag)) return [];
        ShapeChecker.Check(node, ScenarioShapes.Scenario, bag);
        if (node is not YamlMapping root || bag.HasErrors) return [];
        if (!withExpectations) root = WithoutExpectations(root);
        var rows = root.Maps("rows").ToList();
        if (withExpectations && !Expects(root) && !root.Maps("next").Any(Expects) && !rows.Exists(Expects)) bag.Add(Messages.NothingExpected(root.Entries[0].Key.Span));
        ComplainAboutTwins(rows, bag);
        var folder = Path.GetDirectoryName(file.Path) ?? "";
        var vehicle = Vehicle(root, folder, bag);
        if (vehicle is null) return [];
        return [.. rows.Cast<YamlMapping?>().DefaultIfEmpty().Select(row => Case(root, row, vehicle, folder, bag)).OfType<ScenarioCase>()];
    }

    private static bool Expects(YamlMapping map) => map.Has("expect");

    private static YamlMapping WithoutExpectations(YamlMapping map) => new(map.Span,
    [
        .. map.Entries.Where(entry => entry.Name != "expect").Select(entry => entry.Value is YamlSequence { Items: [YamlMapping, ..] } list && entry.Name is "next" or "rows"
            ? entry with { Value = new YamlSequence(list.Span, [.. list.Items.Select(item => item is YamlMapping one ? WithoutExpectations(one) : item)]) }
            : entry),
    ]);

    private static void ComplainAboutTwins(List<YamlMapping> rows, DiagnosticBag bag)
    {
        var first = new Dictionary<string, SourceSpan>(StringComparer.Ordinal);
        foreach (var name in rows.Select(row => row.Scalar("row")).OfType<YamlScalar>())
            if (!first.TryAdd(name.Text, name.Span)) bag.Add(Messages.StatedTwice(name.Span, $"row '{name.Text}'", first[name.Text]));
    }

    private ScenarioCase? Case(YamlMapping root, YamlMapping? row, SheetLayer vehicle, string folder, DiagnosticBag bag)
    {
        var found = new DiagnosticBag();
        var parameters = new Parameters(row, found);
        var (filled, own) = (parameters.Fill(root, ["rows"]), row is null ? null : parameters.Fill(row, ["with"]));
        var sheet = vehicle.Root == root.Map("vehicle") ? vehicle with { Root = filled.Map("vehicle")! } : vehicle;
        if (withExpectations) parameters.ComplainAboutUnused();
        ScenarioCase? read = null;
        if (!found.HasErrors)
        {
            List<SheetLayer> layers = [sheet, Layer(filled)];
            if (own is not null) layers.Add(Layer(own));
            var situation = _sheets.Assemble(layers, found) with { Title = root.Text("scenario") ?? "" };
            var workday = new WorkdayReader(engine.Vocabulary, found).Read(filled, folder);
            var turns = new TurnReader(situation, _texts, workday, found).Read(filled.List("expect").Concat(own?.List("expect") ?? []), filled.Maps("next"));
            if (!found.HasErrors) read = new ScenarioCase(engine, root.Text("scenario") ?? "", row?.Text("row"), (row?.Scalar("row") ?? root.Scalar("scenario")!).Span, situation, turns);
        }

        bag.AddRange(found.Ordered());
        return read;
    }

    private static SheetLayer Layer(YamlMapping map) =>
        new(new YamlMapping(map.Span, [.. map.Entries.Where(entry => !OfTheScenario.Contains(entry.Name))]), Source.Stated) { Replaces = true };

    private SheetLayer? Vehicle(YamlMapping root, string folder, DiagnosticBag bag)
    {
        if (root.Value("vehicle") is YamlMapping inline) return new SheetLayer(inline, Source.Stated);
        var path = Path.Combine(folder, root.Text("vehicle") ?? "");
        var (layer, mistakes) = _read.GetOrAdd(path, ReadSheet);
        bag.AddRange(mistakes);
        return layer;
    }

    private static (SheetLayer? Layer, IReadOnlyList<Diagnostic> Mistakes) ReadSheet(string path)
    {
        var bag = new DiagnosticBag();
        var layer = SourceFiles.TryLoad(path, bag) is { } sheet ? SheetLayer.Read(sheet, SheetShapes.Vehicle, Source.Stated, bag) : null;
        return (layer, bag.Ordered());
    }
}
