using ProcedureRules.Quantities;

namespace ProcedureRules.Refrigerants;

/// <summary>The pressure below which water leaves as vapour: by boiling, and below freezing straight from the ice.</summary>
internal static class Water
{
    /// <summary>The published sources.</summary>
    public const string Basis =
        "liquid: short equation to Wagner and Pruss, J. Phys. Chem. Ref. Data 31 (2002) 387-535 (IAPWS-95); ice: IAPWS R14-08(2011)";

    private static readonly VapourCurve Liquid = new(
        647.096, 22_064_000, 273.16, 647.096, fromZero: false,
        (-9.75639641045262, 1.018), (3.3357600887120102, 1.206), (-1.10029278432831, 2.327),
        (0.02037617155190105, 5.753), (-2.6668589845604367, 4.215), (6.676721087238668, 14.951));

    // The equation goes down to 50 K; below -100 degC there is a hundred-thousandth of a pascal, which no workshop gauge shows.
    private static readonly VapourCurve Ice = new(
        273.16, 611.657, 173.15, 273.16, fromZero: true,
        (-21.2144006, 0.00333333333), (27.3203819, 1.20666667), (-6.1059813, 1.70333333));

    /// <summary>The pressure below which it leaves at a temperature; anything at all outside -100 degC to its critical temperature.</summary>
    public static Quantity Pressure(Quantity temperature) => temperature.Low >= Ice.Lowest && temperature.High <= Liquid.Highest
        ? Quantity.Between(PressureAt(temperature.Low).Low, PressureAt(temperature.High).High, Dimension.AbsolutePressure)
        : Quantity.Anything(Dimension.AbsolutePressure);

    /// <summary>The temperature above which it leaves at a pressure; anything at all where <see cref="Pressure"/> gives no such pressure.</summary>
    public static Quantity Temperature(Quantity pressure) => pressure.Low >= Ice.LowestPressure && pressure.High <= Liquid.HighestPressure
        ? Quantity.Between(TemperatureAt(pressure.Low).Low, TemperatureAt(pressure.High).High, Dimension.Temperature)
        : Quantity.Anything(Dimension.Temperature);

    private static (double Low, double High) PressureAt(double kelvin) => (kelvin < Liquid.Lowest ? Ice : Liquid).Pressure(kelvin, kelvin);

    // The two equations meet within a hundredth of a per cent; a pressure between them is that of the triple point.
    private static (double Low, double High) TemperatureAt(double pressure) =>
        pressure <= Ice.HighestPressure ? Ice.Temperature(pressure, pressure)
        : pressure >= Liquid.LowestPressure ? Liquid.Temperature(pressure, pressure)
        : (Liquid.Lowest, Liquid.Lowest);
}
