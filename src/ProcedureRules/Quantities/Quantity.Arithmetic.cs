using static ProcedureRules.Quantities.Directed;

namespace ProcedureRules.Quantities;

// Every result contains each value that the operation gives for values between the bounds of its operands: bounds are rounded
// outward. Operands of dimensions that do not go together are a mistake of the caller, who has DimensionRules to ask before.
public readonly partial record struct Quantity
{
    /// <summary>The sum.</summary>
    /// <exception cref="InvalidOperationException">The dimensions cannot be added.</exception>
    public static Quantity operator +(Quantity a, Quantity b) =>
        new(AddDown(a.Low, b.Low), AddUp(a.High, b.High), Due(DimensionRules.Add(a.Dimension, b.Dimension), "+", a, b));

    /// <summary>The difference.</summary>
    /// <exception cref="InvalidOperationException">The dimensions cannot be subtracted.</exception>
    public static Quantity operator -(Quantity a, Quantity b) =>
        new(AddDown(a.Low, -b.High), AddUp(a.High, -b.Low), Due(DimensionRules.Subtract(a.Dimension, b.Dimension), "-", a, b));

    /// <summary>The value with its sign turned.</summary>
    /// <exception cref="InvalidOperationException">A sign has no meaning for the dimension.</exception>
    public static Quantity operator -(Quantity a) => new(-a.High, -a.Low, Signed(a));

    /// <summary>The product.</summary>
    /// <exception cref="InvalidOperationException">The dimensions cannot be multiplied.</exception>
    public static Quantity operator *(Quantity a, Quantity b)
    {
        var dimension = Due(DimensionRules.Multiply(a.Dimension, b.Dimension), "*", a, b);
        var low = Math.Min(
            Math.Min(MultiplyDown(a.Low, b.Low), MultiplyDown(a.Low, b.High)),
            Math.Min(MultiplyDown(a.High, b.Low), MultiplyDown(a.High, b.High)));
        var high = Math.Max(
            Math.Max(MultiplyUp(a.Low, b.Low), MultiplyUp(a.Low, b.High)),
            Math.Max(MultiplyUp(a.High, b.Low), MultiplyUp(a.High, b.High)));
        return new(low, high, dimension);
    }

    /// <summary>The quotient; anything at all where the divisor may be zero on the inside, or is zero.</summary>
    /// <remarks>A divisor that only touches zero with one end leaves the quotient unbounded on one side.</remarks>
    /// <exception cref="InvalidOperationException">The dimensions cannot be divided.</exception>
    public static Quantity operator /(Quantity a, Quantity b)
    {
        var dimension = Due(DimensionRules.Divide(a.Dimension, b.Dimension), "/", a, b);
        if (b is { Low: 0, High: 0 }) return Anything(dimension);
        if (a is { Low: 0, High: 0 }) return new(0, 0, dimension);
        if (b.Low < 0 && b.High > 0) return Anything(dimension);
        var (al, ah, bl, bh) = b.High <= 0 ? (-a.High, -a.Low, -b.High, -b.Low) : (a.Low, a.High, b.Low, b.High);
        var low = DivideDown(al, al >= 0 ? bh : bl);
        var high = DivideUp(ah, ah >= 0 ? bl : bh);
        return new(low, high, dimension);
    }

    /// <summary>The lesser of two.</summary>
    /// <exception cref="InvalidOperationException">The dimensions differ.</exception>
    public static Quantity Min(Quantity a, Quantity b) =>
        new(Math.Min(a.Low, b.Low), Math.Min(a.High, b.High), Shared(a, b));

    /// <summary>The greater of two.</summary>
    /// <exception cref="InvalidOperationException">The dimensions differ.</exception>
    public static Quantity Max(Quantity a, Quantity b) =>
        new(Math.Max(a.Low, b.Low), Math.Max(a.High, b.High), Shared(a, b));

    /// <summary>The value without its sign.</summary>
    /// <exception cref="InvalidOperationException">A sign has no meaning for the dimension.</exception>
    public static Quantity Abs(Quantity a)
    {
        var dimension = Signed(a);
        if (a.Low >= 0) return a;
        return a.High <= 0 ? new(-a.High, -a.Low, dimension) : new(0, Math.Max(-a.Low, a.High), dimension);
    }

    /// <summary>The least interval that holds both.</summary>
    /// <exception cref="InvalidOperationException">The dimensions differ.</exception>
    public static Quantity Hull(Quantity a, Quantity b) =>
        new(Math.Min(a.Low, b.Low), Math.Max(a.High, b.High), Shared(a, b));

    /// <summary>What lies in both, or null when nothing does.</summary>
    /// <remarks>Intervals that miss each other by no more than a rounding (see <see cref="LessOrEqual"/>) share the place where they meet.</remarks>
    /// <exception cref="InvalidOperationException">The dimensions differ.</exception>
    public static Quantity? Intersect(Quantity a, Quantity b)
    {
        var dimension = Shared(a, b);
        var (low, high) = (Math.Max(a.Low, b.Low), Math.Min(a.High, b.High));
        if (low <= high) return new Quantity(low, high, dimension);
        return IsBeyond(low, high, dimension) ? null : new Quantity(high, low, dimension);
    }

    /// <summary>Whether every value of another quantity is also one of this.</summary>
    public bool Contains(Quantity other) =>
        DimensionRules.AreComparable(Dimension, other.Dimension) && Low <= other.Low && other.High <= High;

    private static Dimension Due(Dimension? result, string operation, Quantity a, Quantity b) =>
        result ?? throw new InvalidOperationException(DimensionRules.WhyNot(operation, a.Dimension, b.Dimension));

    private static Dimension Shared(Quantity a, Quantity b) =>
        Due(DimensionRules.Common(a.Dimension, b.Dimension), "compare", a, b);

    private static Dimension Signed(Quantity a) => DimensionRules.Negate(a.Dimension)
        ?? throw new InvalidOperationException($"a sign has no meaning for {Dimensions.Phrase(a.Dimension)}");
}
