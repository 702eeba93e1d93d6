namespace ProcedureRules.Inference;

/// <summary>A condition that binds, ready to match.</summary>
/// <param name="Predicate">The predicate's number in the <see cref="RuleIndex"/>.</param>
/// <param name="First">The slot of its first object; -1 where any will do.</param>
/// <param name="Second">The slot of its second object, or -1.</param>
internal readonly record struct PatternPlan(int Predicate, int First, int Second);
