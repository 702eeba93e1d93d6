using ProcedureRules.Plans;

namespace ProcedureRules.Explaining;

/// <summary>Why something does not stand in a plan.</summary>
/// <param name="Item">What was asked for.</param>
/// <param name="NotTaken">Where it is one way of several: why another one was taken.</param>
/// <param name="ForbiddenBy">The rules that forbid it.</param>
/// <param name="Rules">What would give it, each with its conditions; the nearest to giving it first.</param>
/// <param name="Change">The smallest change of facts found that brings it in; empty where none was found.</param>
/// <param name="Search">What the search for it came to.</param>
/// <param name="Tried">How many changes were tried.</param>
public sealed record WhyNotAnswer(
    Wording Item, IReadOnlyList<Wording> NotTaken, IReadOnlyList<Reason> ForbiddenBy, IReadOnlyList<WhyNotRule> Rules, IReadOnlyList<SupposedFact> Change, ChangeSearch Search, int Tried);
