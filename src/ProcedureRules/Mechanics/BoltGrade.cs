using ProcedureRules.Quantities;

namespace ProcedureRules.Mechanics;

/// <summary>A strength grade of bolts, as a published standard defines it.</summary>
public sealed class BoltGrade
{
    internal const string StainlessStandard = "ISO 3506-1";

    internal BoltGrade(string name, string mark, string standard, bool isMetric, params IReadOnlyList<(Quantity UpTo, Quantity Proof)> ranges)
    {
        Name = name;
        Mark = mark;
        Standard = standard;
        IsMetric = isMetric;
        Ranges = ranges;
    }

    /// <summary>Its name as packs say it, such as <c>class_8_8</c>.</summary>
    public string Name { get; }

    /// <summary>What is called for in the shop, such as <c>8.8</c>.</summary>
    public string Mark { get; }

    /// <summary>As a sentence names it, such as <c>class 8.8</c>.</summary>
    public string Text => $"{Name.Split('_')[0]} {Mark}";

    /// <summary>The standard.</summary>
    public string Standard { get; }

    /// <summary>Whether it belongs to metric bolts.</summary>
    public bool IsMetric { get; }

    /// <summary>Whether it is a stainless one, whose threads seize where they run dry.</summary>
    public bool IsStainless => Standard == StainlessStandard;

    /// <summary>Proof stress by size: each up to a diameter, that included.</summary>
    internal IReadOnlyList<(Quantity UpTo, Quantity Proof)> Ranges { get; }

    /// <summary>The least diameter the standard speaks of.</summary>
    internal Quantity From => IsMetric ? Quantity.Of(1.6, "mm") : Quantity.Of(0.25, "in");

    /// <summary>The proof stress at a diameter; anything at all outside the sizes of the standard.</summary>
    public Quantity ProofStress(Quantity diameter)
    {
        var pieces = Pieces(diameter);
        return pieces.Count == 0
            ? Quantity.Anything(Dimension.PressureDifference)
            : pieces.Select(piece => piece.Proof).Aggregate(Quantity.Hull);
    }

    /// <summary>The parts of a range of diameters that have a proof stress of their own; none where the range leaves the standard.</summary>
    internal IReadOnlyList<(Quantity Diameter, Quantity Proof)> Pieces(Quantity diameter)
    {
        if (diameter.Low < From.Low || diameter.High > Ranges[^1].UpTo.High) return [];
        var pieces = new List<(Quantity, Quantity)>();
        var from = From;
        foreach (var (upTo, proof) in Ranges)
        {
            // A diameter just over the last size of one range has already left it.
            if (diameter.Low <= upTo.High && (diameter.High > from.High || from == From))
                pieces.Add((Quantity.Between(Math.Max(from.Low, diameter.Low), Math.Min(upTo.High, diameter.High), Dimension.Length), proof));
            from = upTo;
        }

        return pieces;
    }
}
