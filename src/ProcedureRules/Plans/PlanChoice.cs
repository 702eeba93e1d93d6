using ProcedureRules.Inference;
using ProcedureRules.Quantities;

namespace ProcedureRules.Plans;

/// <summary>A choice that the plan made, with the ways not taken.</summary>
public sealed class PlanChoice
{
    /// <summary>What is chosen.</summary>
    public required ChoiceKey Key { get; init; }

    /// <summary>The id by which it is fixed: <c>engine.hold</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Whether the technician fixed it.</summary>
    public required bool IsFixed { get; init; }

    /// <summary>What it is for.</summary>
    public required Wording Text { get; init; }

    /// <summary>Index of the way taken.</summary>
    public required int Taken { get; init; }

    /// <summary>The ways, in pack order.</summary>
    public required IReadOnlyList<Way> Ways { get; init; }

    /// <summary>Why the choice came up.</summary>
    public required IReadOnlyList<Reason> Because { get; init; }

    /// <summary>One way of a choice.</summary>
    /// <param name="Id">The id by which it is taken.</param>
    /// <param name="Text">The words.</param>
    /// <param name="Rank">Its rank.</param>
    /// <param name="Labour">Labour of the whole plan with it; null where it is not open or may not be gone.</param>
    /// <param name="WhyNot">Why it was not taken; null for the one taken.</param>
    public sealed record Way(string Id, Wording Text, int Rank, Quantity? Labour, Wording? WhyNot);
}
