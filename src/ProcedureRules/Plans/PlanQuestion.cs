using ProcedureRules.Language;

namespace ProcedureRules.Plans;

/// <summary>Something that is not known and matters.</summary>
/// <param name="Id">The id: the fact's or relation's path as <c>--set</c> takes it.</param>
/// <param name="About">The key asked for.</param>
/// <param name="Text">The question.</param>
/// <param name="How">How to find out; null where nothing is said.</param>
/// <param name="AtStep">The id of the step that finds it out during the job; null: it can be answered now.</param>
/// <param name="Matters">What hangs on it, in plan terms.</param>
/// <param name="Assumed">What an archetype assumes meanwhile, where it does.</param>
/// <param name="IsSafety">Whether it decides on a danger or a stop.</param>
/// <param name="Doubted">What was stated and is not reckoned with, since it lies outside what occurs.</param>
public sealed record PlanQuestion(
    string Id, Reading About, Wording Text, Wording? How, string? AtStep, IReadOnlyList<Wording> Matters, Wording? Assumed, bool IsSafety = false,
    Wording? Doubted = null)
{
    /// <summary>
    /// The ids of what is found out before it, since every rule that reads it hangs on one of these, too, and their answer may make it needless. Empty:
    /// it is asked at once.
    /// </summary>
    public IReadOnlyList<string> After { get; init; } = [];
}
