using ProcedureRules.Packs;

namespace ProcedureRules.Language;

/// <summary>A condition on the state of an aspect at a moment of the plan: <c>engine.height is raised</c>.</summary>
/// <param name="Slot">The slot of the part.</param>
/// <param name="Aspect">The aspect.</param>
/// <param name="States">The states that satisfy it.</param>
public sealed record StateCondition(int Slot, Aspect Aspect, StateSet States);
