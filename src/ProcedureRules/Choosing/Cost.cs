using ProcedureRules.Beliefs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Choosing;

/// <summary>
/// Labour of a whole set of steps, in milliseconds: what is firm at its least, what may be needed too at its most, and beside it what only a
/// moment of the plan may ask for. Whole numbers, since sums of them do not depend on the order of their terms.
/// </summary>
internal readonly record struct Cost(long Least, long Most, long Drawn) : IComparable<Cost>
{
    /// <summary>The likely labour, in seconds.</summary>
    public double Likely => Twice / 2000.0;

    /// <summary>Twice the likely labour, which is a whole number.</summary>
    public long Twice => Least + Most;

    /// <summary>The cost of what is required under some beliefs; shared work counts once, since a step is one atom.</summary>
    public static Cost Under(BeliefState beliefs) => new LabourBook(beliefs.Network).Of(beliefs);

    /// <summary>The labour as a range.</summary>
    public Quantity ToQuantity() => Quantity.Between(Math.Min(Least, Most) / 1000.0, Most / 1000.0, Dimension.Duration);

    /// <inheritdoc/>
    public int CompareTo(Cost other) =>
        Twice != other.Twice ? Twice.CompareTo(other.Twice) : Most != other.Most ? Most.CompareTo(other.Most) : Drawn.CompareTo(other.Drawn);
}
