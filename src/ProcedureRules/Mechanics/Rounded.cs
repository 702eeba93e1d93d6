using ProcedureRules.Quantities;

namespace ProcedureRules.Mechanics;

/// <summary>Roots and angles of intervals, rounded outward. Each is called where it only rises.</summary>
internal static class Rounded
{
    private const double RightAngle = Math.PI / 2;

    /// <summary>The bounds without their dimension, for formulas in SI base units.</summary>
    public static Quantity Bare(Quantity value) => Quantity.Between(value.Low, value.High, Dimension.Number);

    /// <summary>Bare bounds as a quantity of a dimension.</summary>
    public static Quantity As(this Quantity bare, Dimension dimension, double least = double.NegativeInfinity) =>
        Quantity.Between(Math.Max(bare.Low, least), Math.Max(bare.High, least), dimension);

    /// <summary>The square root of what is not negative.</summary>
    public static Quantity Root(Quantity bare) => Bounds(Math.Sqrt(Math.Max(bare.Low, 0)), Math.Sqrt(Math.Max(bare.High, 0)));

    /// <summary>The sine of an angle from none to a right one.</summary>
    public static Quantity Sine(Quantity angle) => Bounds(Math.Sin(Math.Min(angle.Low, RightAngle)), Math.Sin(Math.Min(angle.High, RightAngle)));

    /// <summary>The angle that has a sine from 0 to 1.</summary>
    public static Quantity ArcSine(Quantity sine) =>
        Quantity.Between(Math.Max(0, Down(Math.Asin(Math.Clamp(sine.Low, 0, 1)))), Math.Min(RightAngle, Up(Math.Asin(Math.Clamp(sine.High, 0, 1)))), Dimension.Angle);

    private static Quantity Bounds(double low, double high) => Quantity.Between(Math.Max(0, Down(low)), Up(high), Dimension.Number);

    // Zero and one come out exact; all else may be off in the last place, or with some libraries in the last but one.
    private static double Down(double value) => value is 0 or 1 ? value : Math.BitDecrement(Math.BitDecrement(value));

    private static double Up(double value) => value is 0 or 1 ? value : Math.BitIncrement(Math.BitIncrement(value));
}
