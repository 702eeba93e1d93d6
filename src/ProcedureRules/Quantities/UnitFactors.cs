namespace ProcedureRules.Quantities;

/// <summary>The figures that the unit table is built from.</summary>
/// <remarks>
/// Exact by definition unless said otherwise: NIST SP 811 (2008), appendix B. The conventional inch of mercury there is a
/// measured convention, and the circle constant is cut after forty decimals, far below what a double can hold.
/// </remarks>
internal static class UnitFactors
{
    public static readonly ExactNumber One = 1;
    public static readonly ExactNumber Milli = ExactNumber.Parse("0.001");
    public static readonly ExactNumber Micro = ExactNumber.Parse("0.000001");
    public static readonly ExactNumber Kilo = 1000;
    public static readonly ExactNumber Inch = ExactNumber.Parse("0.0254");
    public static readonly ExactNumber Foot = Inch * 12;
    public static readonly ExactNumber Mile = Foot * 5280;
    public static readonly ExactNumber Pound = ExactNumber.Parse("0.45359237");
    public static readonly ExactNumber Ounce = Pound / 16;
    public static readonly ExactNumber StandardGravity = ExactNumber.Parse("9.80665");
    public static readonly ExactNumber PoundForce = Pound * StandardGravity;
    public static readonly ExactNumber Psi = PoundForce / (Inch * Inch);
    public static readonly ExactNumber InchOfMercury = ExactNumber.Parse("3386.389");
    public static readonly ExactNumber InchOfWater = ExactNumber.Parse("249.08891");
    public static readonly ExactNumber Torr = (ExactNumber)101325 / 760;
    public static readonly ExactNumber Gallon = Inch * Inch * Inch * 231;
    public static readonly ExactNumber Litre = Milli;
    public static readonly ExactNumber Horsepower = PoundForce * Foot * 550;
    public static readonly ExactNumber FahrenheitDegree = (ExactNumber)5 / 9;
    public static readonly ExactNumber FahrenheitZero = ExactNumber.Parse("459.67") * FahrenheitDegree;
    public static readonly ExactNumber CelsiusZero = ExactNumber.Parse("273.15");
    public static readonly ExactNumber Pi = ExactNumber.Parse("3.1415926535897932384626433832795028841972");
    public static readonly ExactNumber Degree = Pi / 180;
    public static readonly ExactNumber Minute = 60;
    public static readonly ExactNumber Hour = 3600;
    public static readonly ExactNumber Day = 86400;
}
