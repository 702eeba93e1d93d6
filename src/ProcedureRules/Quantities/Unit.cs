namespace ProcedureRules.Quantities;

/// <summary>One unit of the table.</summary>
public sealed class Unit
{
    internal Unit(string names, Dimension dimension, ExactNumber factor, ExactNumber offset, string description)
    {
        Names = names.Split('|');
        Dimension = dimension;
        ExactFactor = factor;
        ExactOffset = offset;
        Description = description;
    }

    /// <summary>How the unit is printed, such as <c>lb.ft</c>.</summary>
    public string Symbol => Names[0];

    /// <summary>Every spelling that is read, the printed one first.</summary>
    public IReadOnlyList<string> Names { get; }

    /// <summary>The dimension of what it measures.</summary>
    public Dimension Dimension { get; }

    /// <summary>The word that stands before the figure, <c>dT</c> or <c>dP</c>, for the units of a difference; else null.</summary>
    public string? Prefix => UnitTable.PrefixOf(Dimension);

    /// <summary>One of this unit in the SI base unit. Negative for a depth of vacuum.</summary>
    public double Factor => ExactFactor.ToDouble();

    /// <summary>What the unit's zero is in the SI base unit; other than zero only on a temperature scale.</summary>
    public double Offset => ExactOffset.ToDouble();

    /// <summary>The system it belongs to; null when both use it.</summary>
    public UnitSystem? System { get; internal init; }

    /// <summary>What it is, in words.</summary>
    public string Description { get; }

    internal ExactNumber ExactFactor { get; }

    internal ExactNumber ExactOffset { get; }

    /// <summary>Units of one group may follow each other, the larger first: <c>2 lb 14 oz</c>.</summary>
    internal string? CompoundGroup { get; init; }

    /// <summary>The magnitude, in the base unit, from which US printing uses this unit; null for never.</summary>
    internal double? UsFrom { get; init; }

    /// <summary>The magnitude, in the base unit, from which SI printing uses this unit; null for never.</summary>
    internal double? SiFrom { get; init; }

    /// <summary>Whether it prints only what lies wholly below the zero of its dimension: a depth of vacuum.</summary>
    internal bool IsDepth => ExactFactor.Sign < 0;

    internal ExactNumber ToBase(ExactNumber figure) => (figure * ExactFactor) + ExactOffset;

    internal ExactNumber FromBase(ExactNumber value) => (value - ExactOffset) / ExactFactor;

    /// <inheritdoc/>
    public override string ToString() => Prefix is null ? Symbol : $"{Prefix} {Symbol}";
}
