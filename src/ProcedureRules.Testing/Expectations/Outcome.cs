using ProcedureRules.Beliefs;
using ProcedureRules.Plans;

namespace ProcedureRules.Testing.Expectations;

/// <summary>What a scenario came to at one turn.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Beliefs">What is believed before any way was chosen.</param>
internal sealed record Outcome(Plan Plan, BeliefState Beliefs);
