using System.Globalization;
using ProcedureRules.Logic;
using ProcedureRules.Quantities;
using ProcedureRules.Refrigerants;

namespace ProcedureRules.Reports;

/// <summary>The table of a refrigerant's boiling pressures over temperature.</summary>
public static class SaturationTable
{
    private static readonly Unit Fahrenheit = UnitTable.Find("degF")!;
    private static readonly Unit Celsius = UnitTable.Find("degC")!;
    private static readonly Unit Foot = UnitTable.Find("ft")!;
    private static readonly Unit Psi = UnitTable.Find("psi")!;
    private static readonly Unit Vacuum = UnitTable.Find("inHg vac")!;
    private static readonly Unit Kilopascal = UnitTable.Find("kPa abs")!;

    /// <summary>The table at some temperatures in the air pressure of an altitude; rows beyond the refrigerant's range say so.</summary>
    public static FigureTable Of(Refrigerant refrigerant, IEnumerable<Quantity> temperatures, Quantity altitude)
    {
        ArgumentNullException.ThrowIfNull(refrigerant);
        var air = StandardAtmosphere.AirPressure(altitude);
        var rows = temperatures.Select(temperature => Row(refrigerant, temperature, air)).ToList();
        var isSeaLevel = altitude is { Low: 0, High: 0 };
        var where = isSeaLevel ? "sea level" : string.Create(CultureInfo.InvariantCulture, $"{altitude.In(Foot).Low:F0} ft");
        return new FigureTable(
            $"{refrigerant.Designation}, saturation: liquid and vapour together",
            [new("degF", rows.TrueForAll(row => IsWhole(row.Figures[0]!.Value)) ? 0 : 1), new("psig", 1), new("degC", 1), new("kPaAbs", 1)],
            rows,
            [
                $"psig as a gauge shows it at {where}, in air of {air.ToDisplay(UnitSystem.Us)}.",
                "For the refrigerant alone: air or another refrigerant mixed in changes the pressure.",
            ],
            isSeaLevel ? [refrigerant.Basis] : [refrigerant.Basis, StandardAtmosphere.Basis]);
    }

    private static bool IsWhole(double figure) => Math.Abs(figure - Math.Round(figure)) < 1e-6;

    private static FigureRow Row(Refrigerant refrigerant, Quantity temperature, Quantity air)
    {
        var (fahrenheit, celsius) = (temperature.In(Fahrenheit).Low, temperature.In(Celsius).Low);
        var pressure = refrigerant.SaturationPressure(temperature);
        if (pressure.Midpoint is not { } absolute)
            return new FigureRow([fahrenheit, null, celsius, null], OutOfRange(refrigerant, temperature));
        var gauge = Quantity.Point(absolute - air.Midpoint!.Value, Dimension.GaugePressure);
        return new FigureRow(
            [fahrenheit, gauge.In(Psi).Low, celsius, pressure.In(Kilopascal).Low],
            gauge.Low < 0 ? string.Create(CultureInfo.InvariantCulture, $"{gauge.In(Vacuum).Low:F1} inHg vac") : null);
    }

    private static string OutOfRange(Refrigerant refrigerant, Quantity temperature)
    {
        var range = refrigerant.Temperatures;
        return Quantity.GreaterThan(temperature, range) == Truth.Yes
            ? $"above the critical temperature, {Quantity.Point(range.High, Dimension.Temperature).ToDisplay(UnitSystem.Us)}: no saturation"
            : $"unknown: the equation starts at {Quantity.Point(range.Low, Dimension.Temperature).ToDisplay(UnitSystem.Us)}";
    }
}
