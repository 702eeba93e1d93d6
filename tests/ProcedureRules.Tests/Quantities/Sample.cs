using FsCheck;
using FsCheck.Fluent;
using ProcedureRules.Quantities;

namespace ProcedureRules.Tests.Quantities;

/// <summary>Generators: workshop figures most of the time, the ends of the number line some of the time.</summary>
public static class Sample
{
    private static readonly double[] Edges =
    [
        0, 1, -1, 0.1, 1.0 / 3, 1e-300, -1e-300, 1e300, -1e300, double.Epsilon, -double.Epsilon,
        double.MaxValue, double.MinValue, 273.15, 255.37222222222223, 255.3722222222222, -101325,
    ];

    public static Arbitrary<Quantity> Quantities() => Arb.From(AnyQuantity(Gen.Elements(Dimensions.All.ToArray())));

    public static Arbitrary<Dimension> DimensionNames() => Arb.From(Gen.Elements(Dimensions.All.ToArray()));

    /// <summary>A pair in dimensions that share an addition, a multiplication and a comparison.</summary>
    public static Arbitrary<(Quantity A, Quantity B)> Lengths() =>
        Arb.From(AnyQuantity(Gen.Constant(Dimension.Length)).Two().Select(pair => (pair.Item1, pair.Item2)));

    /// <summary>A value inside a quantity: its ends and places between them.</summary>
    public static double Inside(Quantity value, byte place)
    {
        var low = Math.Max(value.Low, -1e200);
        var high = Math.Min(value.High, 1e200);
        if (low > high) return double.IsFinite(value.Low) ? value.Low : value.High;
        return place switch
        {
            0 => low,
            255 => high,
            _ => Math.Clamp(low + ((high - low) * (place / 255.0)), low, high),
        };
    }

    private static Gen<Quantity> AnyQuantity(Gen<Dimension> dimensions) =>
        from dimension in dimensions
        from a in Bound(dimension)
        from b in Bound(dimension)
        from shape in Gen.Choose(0, 9)
        select shape switch
        {
            < 4 => Quantity.Point(a, dimension),
            8 => Quantity.Between(Math.Min(a, b), double.PositiveInfinity, dimension),
            9 => Quantity.Between(double.NegativeInfinity, Math.Max(a, b), dimension),
            _ => Quantity.Between(Math.Min(a, b), Math.Max(a, b), dimension),
        };

    private static Gen<double> Bound(Dimension dimension)
    {
        var units = UnitTable.For(dimension).ToArray();
        var unitless = Gen.Choose(-2000, 200_000).Select(n => n / 1000.0);
        var workshop = units.Length == 0
            ? unitless
            : unitless.SelectMany(figure => Gen.Elements(units).Select(unit => Quantity.Of(figure, unit.ToString()).Low));
        var raw = ArbMap.Default.GeneratorFor<double>().Where(double.IsFinite);
        return Gen.Frequency((6, workshop), (2, raw), (1, Gen.Elements(Edges)));
    }
}
