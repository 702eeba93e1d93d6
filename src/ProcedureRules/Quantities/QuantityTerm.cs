namespace ProcedureRules.Quantities;

/// <summary>One end of a quantity as it was written: a signed figure, its unit if it has one, and its value in the base unit.</summary>
internal readonly record struct QuantityTerm(ExactNumber Figure, Unit? Unit, int Offset, int Length)
{
    /// <summary>What further units added, in the base unit: the ounces of 2 lb 14 oz.</summary>
    public ExactNumber More { get; init; }

    /// <summary>Whether more than one unit was written.</summary>
    public bool IsCompound { get; init; }

    /// <summary>+1 or -1 for an end written as inf or -inf.</summary>
    public int Infinite { get; init; }

    public Dimension Dimension => Unit?.Dimension ?? Dimension.Number;

    /// <summary>The value in the base unit, as a point on a scale.</summary>
    public ExactNumber Value => Unit is null ? Figure : Unit.ToBase(Figure) + More;

    /// <summary>The value in the base unit as a distance: a tolerance on 80 degF does not start at absolute zero.</summary>
    public ExactNumber Span => Unit is null ? Figure : (Figure * Unit.ExactFactor.Abs()) + More;

    /// <summary>This end as a double bound; an infinite depth of vacuum lies at the bottom.</summary>
    public double Bound => Infinite == 0 ? Value.ToDouble()
        : (Infinite > 0) == (Unit is null || !Unit.IsDepth) ? double.PositiveInfinity : double.NegativeInfinity;

    /// <summary>This end with the other end's unit, if it has none of its own.</summary>
    public QuantityTerm WithUnitOf(QuantityTerm other) =>
        Unit is null && !other.IsCompound ? this with { Unit = other.Unit } : this;
}
