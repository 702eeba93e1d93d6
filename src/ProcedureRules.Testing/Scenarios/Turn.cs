using ProcedureRules.Testing.Expectations;

namespace ProcedureRules.Testing.Scenarios;

/// <summary>One turn of a scenario.</summary>
/// <param name="Statements">What is found out first.</param>
/// <param name="Done">Steps that are done then, each with its place.</param>
/// <param name="Expectations">What is expected of the plan after it.</param>
internal sealed record Turn(IReadOnlyList<string> Statements, IReadOnlyList<StepExpected> Done, IReadOnlyList<Expectation> Expectations);
