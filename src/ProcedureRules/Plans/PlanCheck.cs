using ProcedureRules.Logic;

namespace ProcedureRules.Plans;

/// <summary>Limits to check at a step.</summary>
/// <param name="Text">What to check, with its limits.</param>
/// <param name="Verdict">What the known facts already say: yes (within), no (not within), unknown (measure it).</param>
/// <param name="During">Whether it is watched during the step.</param>
/// <param name="Reason">Why.</param>
public sealed record PlanCheck(Wording Text, Truth Verdict, bool During, Reason Reason);
