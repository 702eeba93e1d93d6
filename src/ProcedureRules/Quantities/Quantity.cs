namespace ProcedureRules.Quantities;

/// <summary>A value that is known to lie between two bounds, both included, in a dimension.</summary>
/// <remarks>
/// The bounds are in the SI base unit of the dimension; a bound may be infinite when nothing is known on that side. A single
/// figure is the interval that has it at both ends. Two quantities are equal when bounds and dimension are.
/// </remarks>
public readonly partial record struct Quantity
{
    private Quantity(double low, double high, Dimension dimension)
    {
        // Adding zero turns a negative zero into the one zero.
        Low = low + 0.0;
        High = high + 0.0;
        Dimension = dimension;
    }

    /// <summary>The lower bound in the SI base unit, or negative infinity.</summary>
    public double Low { get; }

    /// <summary>The upper bound in the SI base unit, or infinity.</summary>
    public double High { get; }

    /// <summary>What kind of quantity it is.</summary>
    public Dimension Dimension { get; }

    /// <summary>Whether both bounds are one figure.</summary>
    public bool IsPoint => Low == High;

    /// <summary>Whether both bounds are finite.</summary>
    public bool IsBounded => double.IsFinite(Low) && double.IsFinite(High);

    /// <summary>The figure halfway between the bounds; null when a bound is infinite.</summary>
    public double? Midpoint => IsBounded ? (Low / 2) + (High / 2) : null;

    /// <summary>A single figure in the SI base unit of its dimension.</summary>
    /// <exception cref="ArgumentException">The figure is infinite or not a number.</exception>
    public static Quantity Point(double value, Dimension dimension) => Between(value, value, dimension);

    /// <summary>Everything from one figure to another, in the SI base unit of their dimension.</summary>
    /// <exception cref="ArgumentException">The bounds are in the wrong order, not numbers, or infinite on the wrong side.</exception>
    public static Quantity Between(double low, double high, Dimension dimension)
    {
        if (!(low <= high) || double.IsPositiveInfinity(low) || double.IsNegativeInfinity(high))
            throw new ArgumentException($"{low} to {high} are not the bounds of an interval", nameof(low));
        return new(low, high, dimension);
    }

    /// <summary>A pure number.</summary>
    /// <exception cref="ArgumentException">The figure is infinite or not a number.</exception>
    public static Quantity Number(double value) => Point(value, Dimension.Number);

    /// <summary>A figure in a unit of the table, such as <c>Of(0.75, "in")</c>: the nearest double to its exact value.</summary>
    /// <exception cref="ArgumentException">There is no such unit, or the figure is not finite.</exception>
    public static Quantity Of(double figure, string unit)
    {
        var found = UnitTable.Find(unit) ?? throw new ArgumentException($"'{unit}' is not a unit", nameof(unit));
        if (!double.IsFinite(figure)) throw new ArgumentException("a figure is finite", nameof(figure));
        return Point(found.ToBase(ExactNumber.From(figure)).ToDouble(), found.Dimension);
    }

    /// <summary>Any value at all of a dimension.</summary>
    public static Quantity Anything(Dimension dimension) => new(double.NegativeInfinity, double.PositiveInfinity, dimension);

    /// <summary>The same bounds read as another dimension that accepts this one (a plain number as a count).</summary>
    /// <exception cref="InvalidOperationException">The dimension does not accept this one.</exception>
    public Quantity As(Dimension due) => DimensionRules.Accepts(due, Dimension)
        ? new(Low, High, due)
        : throw new InvalidOperationException($"{Dimensions.Phrase(due)} is due, not {Dimensions.Phrase(Dimension)}");

    /// <summary>The bounds as figures in a unit of the same dimension, each rounded to the nearest double.</summary>
    /// <exception cref="ArgumentException">The unit is of another dimension.</exception>
    public (double Low, double High) In(Unit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        if (!DimensionRules.Accepts(unit.Dimension, Dimension))
            throw new ArgumentException($"{unit.Symbol} measures {Dimensions.Phrase(unit.Dimension)}", nameof(unit));
        var (a, b) = (Figure(Low), Figure(High));
        return a <= b ? (a, b) : (b, a);

        double Figure(double bound) => double.IsFinite(bound)
            ? unit.FromBase(ExactNumber.From(bound)).ToDouble()
            : unit.IsDepth ? -bound : bound;
    }
}
