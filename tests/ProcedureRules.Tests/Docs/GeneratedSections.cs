using System.Text;
using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Language.Compiling;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;
using ProcedureRules.Shapes;
using ProcedureRules.Testing.Scenarios;

namespace ProcedureRules.Tests.Docs;

/// <summary>The sections of the reference that are written from code, by the name in their markers.</summary>
internal static class GeneratedSections
{
    private static readonly string[] Beside = ["the conclusion '", "the expectation '"];

    /// <summary>An example for each function; its value is what running it gives.</summary>
    public static readonly IReadOnlyDictionary<string, string> FunctionExamples = new Dictionary<string, string>
    {
        ["min"] = "min(oil_pan.drop_available, 3 in)",
        ["max"] = "max(2 in, 1..3 in)",
        ["abs"] = "abs(2 in - 3 in)",
        ["if"] = "if(oil_pan.dented, 1 in, 2 in)",
        ["demanded"] = "demanded(engine.rise)",
        ["allowed"] = "allowed(engine.rise)",
        ["count"] = "count(engine_mount)",
        ["sum"] = "sum(starter, starter.mass)",
        ["least"] = "least(starter, starter.mass, hangs_on(starter, engine))",
        ["greatest"] = "greatest(starter, starter.mass)",
        ["where_least"] = "where_least(starter, starter.mass)",
        ["where_greatest"] = "where_greatest(starter, starter.mass)",
        ["turn_of_rise"] = "turn_of_rise(1.5 in, 32 in)",
        ["moves_into_gap"] = "moves_into_gap(toward, 14 in, 20 in, 3 deg, 0 in)",
        ["safe_rise"] = "safe_rise(toward, 1 in, 14 in, 20 in, 32 in)",
        ["centre_from_axle_loads"] = "centre_from_axle_loads(760 kg, 640 kg, 105 in)",
        ["centre_height"] = "centre_height(760 kg, 730 kg, 1400 kg, 105 in, 24 in, 12 in)",
        ["centre_without"] = "centre_without(1400 kg, 48 in, 200 kg, 4 in)",
        ["front_support_load"] = "front_support_load(1400 kg, 48 in, 200 kg, 4 in, 16 in, 84 in)",
        ["rear_support_load"] = "rear_support_load(1400 kg, 48 in, 200 kg, 4 in, 16 in, 84 in)",
        ["tipping_reserve"] = "tipping_reserve(48 in, 16 in, 84 in)",
        ["push_to_unload_front"] = "push_to_unload_front(1400 kg, 48 in, 4 in, 84 in)",
        ["sling_leg_load"] = "sling_leg_load(200 kg, 2, 60 deg)",
        ["stress_area"] = "stress_area(inch, 3/8 in, 1/16 in)",
        ["proof_stress"] = "proof_stress(grade_5, 3/8 in)",
        ["proof_load"] = "proof_load(class_8_8, 8 mm, 1.25 mm)",
        ["nut_factor"] = "nut_factor(zinc)",
        ["chart_torque"] = "chart_torque(grade_5, 3/8 in, 1/16 in, 0.15..0.20)",
        ["any"] = "any(oil_cooler)",
        ["at_start"] = "at_start(vehicle.height is ground)",
        ["saturation_pressure"] = "saturation_pressure(r134a, 80 degF)",
        ["saturation_temperature"] = "saturation_temperature(r134a, 50 psia)",
        ["saturation_gauge"] = "saturation_gauge(r134a, 70..80 degF, air_pressure(0 ft))",
        ["air_pressure"] = "air_pressure(5000 ft)",
        ["absolute_pressure"] = "absolute_pressure(35 psi, air_pressure(5000 ft))",
        ["gauge_pressure"] = "gauge_pressure(500 micron, air_pressure(0 ft))",
        ["deepest_vacuum"] = "deepest_vacuum(air_pressure(5000 ft))",
        ["water_boiling_pressure"] = "water_boiling_pressure(70 degF)",
        ["water_boiling_temperature"] = "water_boiling_temperature(5000 micron)",
        ["vacuum_rise"] = "vacuum_rise(500 micron, 700 micron, 5 min, 10 min)",
        ["vacuum_slowing"] = "vacuum_slowing(500 micron, 900 micron, 1000 micron)",
        ["r12_to_r134a_charge"] = "r12_to_r134a_charge(36 oz)",
        ["r12_to_r134a_start"] = "r12_to_r134a_start(2 lb 4 oz)",
    };

    /// <summary>Every mapping that the files a person writes are made of, but for conclusions and expectations, which share a table each.</summary>
    public static IReadOnlyList<MapShape> Maps { get; } =
        [.. new[] { PackShapes.Pack, SheetShapes.Vehicle, WorkOrderShapes.WorkOrder, ShopShapes.Shop, ScenarioShapes.Scenario }.SelectMany(ShapeWalk.Maps).Distinct().Where(map => !Array.Exists(Beside, map.Noun.StartsWith))];

    public static IReadOnlyDictionary<string, Func<string>> All { get; } = Maps
        .Select(map => KeyValuePair.Create(map.Noun, (Func<string>)(() => ShapeDocs.Table(map))))
        .Append(new("conclusions", Conclusions))
        .Append(new("expectations", Expectations))
        .Append(new("functions", Functions))
        .Append(new("units", Units))
        .Append(new("a message", () => $"```text\n{CodeExamples.Run(DiagnosticCodes.Find("PR0306")!).ToSnippets()}```\n"))
        .Append(new("messages", DiagnosticTable.Markdown))
        .ToDictionary(entry => entry.Key, entry => entry.Value);

    private static string Conclusions()
    {
        var table = new StringBuilder("| keyword | takes | meaning | beside it | if unknown |\n|---|---|---|---|---|\n");
        foreach (var way in ((OneOfShape)ConclusionShapes.Conclusion.Target).Alternatives)
        {
            var fields = ((MapShape)way.Shape).Fields;
            var row = ShapeDocs.Table(new MapShape("", fields[0])).Split('\n')[2].Split(" | ");
            var beside = fields.Skip(1).Where(field => field.Name != "if_unknown").Select(field => $"`{field.Name}`");
            var ifUnknown = ConclusionForms.Default(way.Key!) switch
            {
                IfUnknown.BehindCheck => "behind_check",
                IfUnknown.Hold => "hold",
                _ => "do",
            };
            table.Append($"| `{way.Key}` | {row[1]} | {fields[0].Documentation} | {string.Join(", ", beside)} | `{ifUnknown}` |\n");
        }

        return table.ToString();
    }

    private static string Expectations()
    {
        var table = new StringBuilder("| keyword | takes | meaning | beside it |\n|---|---|---|---|\n");
        foreach (var way in ((OneOfShape)ExpectationShapes.Expectation.Target).Alternatives)
        {
            var fields = ((MapShape)way.Shape).Fields;
            var row = ShapeDocs.Table(new MapShape("", fields[0])).Split('\n')[2].Split(" | ");
            var beside = fields.Skip(1).Select(field => field.Shape is WordShape words ? $"`{field.Name}`: {string.Join(", ", words.Words.Select(word => $"`{word}`"))}" : $"`{field.Name}`");
            table.Append($"| `{way.Key}` | {row[1]} | {fields[0].Documentation} | {string.Join("; ", beside)} |\n");
        }

        return table.ToString();
    }

    private static string Functions()
    {
        var table = new StringBuilder("| function | gives | example | gives |\n|---|---|---|---|\n");
        foreach (var (name, words) in ProcedureEngine.Functions.Documentation)
        {
            var example = FunctionExamples[name];
            var split = words.IndexOf("): ", StringComparison.Ordinal) + 1;
            table.Append($"| `{words[..split]}` | {words[(split + 2)..]} | `{example}` | {PageExpressions.Evaluate(example)} |\n");
        }

        table.Append("\nWhat they rest on:\n\n");
        foreach (var basis in ProcedureEngine.Functions.Added.Where(function => function.Basis.Length > 0).GroupBy(function => function.Basis))
            table.Append($"- {string.Join(", ", basis.Select(function => $"`{function.Name}`"))}: {basis.Key}.\n");
        return table.ToString().Replace("| function | gives |", "| function | meaning |", StringComparison.Ordinal);
    }

    private static string Units()
    {
        var table = new StringBuilder("| dimension | unit | also read | what it is |\n|---|---|---|---|\n");
        foreach (var dimension in Dimensions.All)
        {
            var name = $"`{Dimensions.Name(dimension)}`";
            foreach (var unit in UnitTable.For(dimension).DefaultIfEmpty())
            {
                table.Append(unit is null
                    ? $"| {name} | | | no unit: a bare figure |\n"
                    : $"| {name} | `{unit}` | {string.Join(", ", unit.Names.Skip(1).Select(spelling => $"`{spelling}`"))} | {unit.Description} |\n");
                name = "";
            }
        }

        return table.ToString();
    }
}
