using ProcedureRules.Logic;
using ProcedureRules.Plans;

namespace ProcedureRules.Explaining;

/// <summary>A condition of a rule, whether it holds, and what it reads.</summary>
/// <param name="Text">The condition.</param>
/// <param name="Holds">Yes, no or unknown.</param>
/// <param name="Read">The values that it reads.</param>
public sealed record WhyNotCondition(Wording Text, Truth Holds, IReadOnlyList<Wording> Read);
