using ProcedureRules.Packs;

namespace ProcedureRules.Language;

/// <summary>While a part's aspect is in a state, another aspect must be in one of some states.</summary>
/// <param name="Aspect">The aspect of the part (slot 0).</param>
/// <param name="State">The state during which it must hold.</param>
/// <param name="Other">The kind whose parts must be so; null: the part itself.</param>
/// <param name="OtherAspect">The aspect that must hold.</param>
/// <param name="States">In one of these.</param>
/// <param name="Text">As written.</param>
public sealed record WhileCondition(Aspect Aspect, int State, Kind? Other, Aspect OtherAspect, StateSet States, string Text);
