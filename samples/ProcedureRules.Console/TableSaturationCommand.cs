using System.CommandLine;
using System.Globalization;
using ProcedureRules.Logic;
using ProcedureRules.Quantities;
using ProcedureRules.Refrigerants;
using ProcedureRules.Reports;

namespace ProcedureRules.ConsoleHost;

/// <summary><c>table saturation</c>: the pressures at which a refrigerant boils.</summary>
internal static class TableSaturationCommand
{
    private const int MostRows = 1000;

    public static Command Create(HostConsole console)
    {
        var name = new Argument<string>("REFRIGERANT") { Description = string.Join(", ", Refrigerant.All.Select(one => one.Designation)) };
        var from = new QuantityOption("--from", "first temperature, in degF unless it says degC", "TEMP", "degF", "-20");
        var to = new QuantityOption("--to", "last temperature", "TEMP", "degF", "160");
        var step = new QuantityOption("--step", "from row to row, in degF unless it says degC", "STEP", "dT degF", "5");
        var altitude = new QuantityOption("--altitude", "where the gauge is, in ft unless it says m", "ALTITUDE", "ft", "0");
        var format = FormatOption.Create();
        var command = new Command(
            "saturation",
            """
            The pressures at which a refrigerant boils, as a gauge shows them.
              Example: procedure-rules table saturation R-134a --from 0 --to 120
            """)
        {
            name, format,
        };
        foreach (var option in new[] { from, to, step, altitude }) option.AddTo(command);
        command.SetAction(parsed =>
        {
            var asked = parsed.GetValue(name)!;
            if (Refrigerant.Find(asked) is not { } refrigerant) return TableCommand.Refuse(Unknown(asked), console);
            if (from.Read(parsed, out var mistake) is not { } first
                || to.Read(parsed, out mistake) is not { } last
                || step.Read(parsed, out mistake) is not { } apart
                || altitude.Read(parsed, out mistake) is not { } height)
                return TableCommand.Refuse(mistake, console);
            if (Mistake(first, last, apart, height) is { } refused) return TableCommand.Refuse(refused, console);
            return TableCommand.Write(SaturationTable.Of(refrigerant, Temperatures(first, last, apart), height), FormatOption.IsJson(parsed, format), console);
        });
        return command;
    }

    // No "did you mean": the name next to that of another refrigerant is still the wrong refrigerant.
    private static string Unknown(string asked) =>
        $"no saturation table of '{asked}' is known, only of {string.Join(", ", Refrigerant.All.Select(one => one.Designation))}";

    private static string? Mistake(Quantity first, Quantity last, Quantity apart, Quantity height) =>
        apart.Low <= 0 ? "--step has to be more than 0"
        : last.Low < first.Low ? "--to lies below --from"
        : (last.Low - first.Low) / apart.Low > MostRows ? $"that is more than {MostRows} rows: use a larger --step"
        : !StandardAtmosphere.Altitudes.Contains(height) ? $"--altitude has to be {Written(StandardAtmosphere.Altitudes.In(UnitTable.Find("ft")!))}"
        : null;

    private static string Written((double Low, double High) feet) => string.Create(CultureInfo.InvariantCulture, $"from {feet.Low:F0} to {feet.High:F0} ft");

    // Each row is reckoned from the first, not from the row before: rounding does not add up.
    private static IEnumerable<Quantity> Temperatures(Quantity first, Quantity last, Quantity apart)
    {
        for (var i = 0; ; i++)
        {
            var next = first + (apart * Quantity.Number(i));
            if (Quantity.GreaterThan(next, last) == Truth.Yes) yield break;
            yield return Quantity.Point(next.Low, Dimension.Temperature);
        }
    }
}
