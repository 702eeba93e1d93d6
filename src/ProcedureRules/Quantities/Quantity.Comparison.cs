using ProcedureRules.Logic;

namespace ProcedureRules.Quantities;

public readonly partial record struct Quantity
{
    // One part in a million million: a sum of workshop figures is wrong by less, and no gauge shows as much.
    private const double RelativeGrain = 1e-12;

    /// <summary>Whether every value of one is at most every value of the other; unknown where they overlap.</summary>
    /// <remarks>
    /// Figures that differ by less than a part in a million million (or by less than a grain of the dimension, a million
    /// millionth of a metre for lengths) count as equal. Without that, 0.02 in + 0.03 in against 0.05 in would be unknown, because a
    /// binary fraction holds none of the three exactly and sums are rounded outward.
    /// </remarks>
    /// <exception cref="InvalidOperationException">The dimensions cannot be compared.</exception>
    public static Truth LessOrEqual(Quantity a, Quantity b)
    {
        var dimension = Shared(a, b);
        if (!IsBeyond(a.High, b.Low, dimension)) return Truth.Yes;
        return IsBeyond(a.Low, b.High, dimension) ? Truth.No : Truth.Unknown;
    }

    /// <summary>Whether every value of one is below every value of the other; unknown where they overlap.</summary>
    /// <inheritdoc cref="LessOrEqual" path="/exception"/>
    public static Truth LessThan(Quantity a, Quantity b) => Kleene.Not(LessOrEqual(b, a));

    /// <summary>Whether every value of one is at least every value of the other; unknown where they overlap.</summary>
    /// <inheritdoc cref="LessOrEqual" path="/exception"/>
    public static Truth GreaterOrEqual(Quantity a, Quantity b) => LessOrEqual(b, a);

    /// <summary>Whether every value of one is above every value of the other; unknown where they overlap.</summary>
    /// <inheritdoc cref="LessOrEqual" path="/exception"/>
    public static Truth GreaterThan(Quantity a, Quantity b) => Kleene.Not(LessOrEqual(a, b));

    /// <summary>Whether the two values are one figure: yes only for two points, no where the intervals lie apart.</summary>
    /// <remarks>This asks about the values; <c>==</c> asks whether the two intervals are the same.</remarks>
    /// <inheritdoc cref="LessOrEqual" path="/exception"/>
    public static Truth EqualTo(Quantity a, Quantity b) => Kleene.And(LessOrEqual(a, b), LessOrEqual(b, a));

    /// <summary>The nearest figure above or below another one that is told apart from it.</summary>
    internal static double NextApart(double figure, Dimension dimension, bool isAbove)
    {
        var step = 1.0001 * (Dimensions.Grain(dimension) + (RelativeGrain * Math.Abs(figure)));
        return isAbove ? figure + step : figure - step;
    }

    /// <summary>Whether one bound is above another by more than rounding can explain.</summary>
    private static bool IsBeyond(double upper, double lower, Dimension dimension)
    {
        if (upper <= lower) return false;
        if (double.IsInfinity(upper) || double.IsInfinity(lower)) return true;
        var grain = Dimensions.Grain(dimension) + (RelativeGrain * Math.Max(Math.Abs(upper), Math.Abs(lower)));
        return upper - lower > grain;
    }
}
