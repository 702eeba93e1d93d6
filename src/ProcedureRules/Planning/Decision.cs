using ProcedureRules.Beliefs;
using ProcedureRules.Inference;

namespace ProcedureRules.Planning;

/// <summary>A complete set of choices.</summary>
/// <param name="Beliefs">The beliefs with them taken.</param>
/// <param name="Taken">The choices in the order taken, with the way.</param>
/// <param name="Undecided">Choices that had to stay open, since what opens a way is not known or no way is left.</param>
/// <param name="Cost">The labour.</param>
/// <param name="Faults">Why it cannot be used; empty if it can.</param>
internal sealed record Decision(
    BeliefState Beliefs,
    IReadOnlyList<(ChoiceKey Key, int Option)> Taken,
    IReadOnlyList<ChoiceKey> Undecided,
    Cost Cost,
    IReadOnlyList<Fault> Faults);
