using ProcedureRules.Plans;

namespace ProcedureRules.Explaining;

/// <summary>A rule that would give an item, under one binding or, where nothing on the vehicle fits it, without.</summary>
/// <param name="Rule">The rule's name.</param>
/// <param name="Pack">Its pack.</param>
/// <param name="Basis">Where its knowledge comes from.</param>
/// <param name="Text">Its reason, in the technician's words.</param>
/// <param name="Conditions">Its conditions with what they come to.</param>
public sealed record WhyNotRule(string Rule, string Pack, string Basis, Wording Text, IReadOnlyList<WhyNotCondition> Conditions)
{
    /// <summary>How many of its conditions do not hold.</summary>
    public int Missing => Conditions.Count(condition => condition.Holds != Logic.Truth.Yes);
}
