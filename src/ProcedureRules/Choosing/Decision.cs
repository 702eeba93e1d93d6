using ProcedureRules.Beliefs;
using ProcedureRules.Inference;

namespace ProcedureRules.Choosing;

/// <summary>A complete set of choices.</summary>
/// <param name="Beliefs">The beliefs with them taken.</param>
/// <param name="Taken">The choices with the way taken, in the order of their names.</param>
/// <param name="Undecided">Choices that had to stay open, since what opens a way is not known or no way is left.</param>
/// <param name="Key">What it is compared by.</param>
/// <param name="Cost">The labour.</param>
/// <param name="Faults">Why it cannot be used; empty if it can.</param>
/// <param name="Root">The beliefs before any of them was taken; what the technician fixed is taken there.</param>
/// <param name="Bound">Where the search ended early: what no set of choices can come below, in seconds of likely labour.</param>
internal sealed record Decision(
    BeliefState Beliefs,
    IReadOnlyList<(ChoiceKey Key, int Option)> Taken,
    IReadOnlyList<ChoiceKey> Undecided,
    DecisionKey Key,
    Cost Cost,
    IReadOnlyList<Fault> Faults,
    BeliefState Root,
    double? Bound = null);
