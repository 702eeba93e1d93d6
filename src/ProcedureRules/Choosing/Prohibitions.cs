using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Packs;

namespace ProcedureRules.Choosing;

/// <summary>
/// What may not occur under some beliefs. A possible prohibition stands as if it were sure, unless it rests on a step that only finds
/// something out, or the plan is to hold before it. Each is judged when it is asked for: few are, of those that the rules of a vehicle hold.
/// </summary>
internal sealed class Prohibitions(BeliefState beliefs)
{
    private readonly BeliefNetwork _network = beliefs.Network;

    /// <summary>States that may not occur, with their effects.</summary>
    public IReadOnlyList<(GroundState State, RecordEffect Source)> States =>
        field ??= [.. _network.RecordsWith<Conclusion.ForbidState>().Where(source => Stands(source)).Select(source => (StateOf(source), source))];

    /// <summary>Whether a plan holds before what a prohibition is about, until it is known whether it stands.</summary>
    public static bool IsWaiting(BeliefState beliefs, RecordEffect source, Assurance level) =>
        level != Assurance.Sure && source.Effect.IfUnknown switch
        {
            IfUnknown.Do => false,
            IfUnknown.Hold => beliefs.IsTentative || level == Assurance.Held,
            _ => beliefs.IsTentative,
        };

    /// <summary>The effect that forbids a step at any moment, or null.</summary>
    public RecordEffect? Of(Step step)
    {
        foreach (var source in About(step))
            if (source.Record.Moments.Count == 0 && Stands(source, step)) return source;
        return null;
    }

    /// <summary>The effects that forbid a step at some moments only.</summary>
    public IEnumerable<RecordEffect> AtMoments(Step step) => _network.Forbidding(step).Where(source => source.Record.Moments.Count > 0 && Stands(source, step));

    /// <summary>The effects that may forbid a step, at any moment or some, before which a plan holds.</summary>
    public IEnumerable<RecordEffect> Waiting(Step step) => About(step).Where(source => Standing(source, step) is var level && level != Assurance.No && IsWaiting(beliefs, source, level));

    private IEnumerable<RecordEffect> About(Step step)
    {
        foreach (var source in _network.Forbidding(step)) yield return source;
        foreach (var source in _network.ForbiddingStatesOf(step.Part))
            if (StateOf(source).IsReachedBy(step)) yield return source;
    }

    private bool Stands(RecordEffect source, Step? step = null) => Standing(source, step) is var level && level != Assurance.No && !IsWaiting(beliefs, source, level);

    // How firmly it stands, where it is about steps that have a purpose.
    private Assurance Standing(RecordEffect source, Step? step)
    {
        var level = step is { } given && source.Effect.Conclusion is Conclusion.ForbidStep
            ? beliefs.Given(source.Record, source.Index, given)
            : beliefs.Available(source.Record, source.Index);
        if (level == Assurance.No) return level;
        var serves = step is { } served && source.Effect.Conclusion is Conclusion.ForbidStep ? beliefs.Purposes.Serve(source.Record, served) : beliefs.Purposes.Serve(source.Record);
        return serves ? level : Assurance.No;
    }

    private static GroundState StateOf(RecordEffect source)
    {
        var state = ((Conclusion.ForbidState)source.Effect.Conclusion!).State;
        return new GroundState(source.Record.Binding.Part(state.Slot), state.Aspect, state.States);
    }
}
