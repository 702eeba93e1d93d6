using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;

namespace ProcedureRules.Choosing;

/// <summary>
/// What may not occur under some beliefs. A possible prohibition stands as if it were sure, unless it rests on a step that only finds
/// something out. Each is judged when it is asked for: few are, of those that the rules of a vehicle hold.
/// </summary>
internal sealed class Prohibitions(BeliefState beliefs)
{
    private readonly BeliefNetwork _network = beliefs.Network;

    /// <summary>States that may not occur, with their effects.</summary>
    public IReadOnlyList<(GroundState State, RecordEffect Source)> States =>
        field ??= [.. _network.RecordsWith<Conclusion.ForbidState>().Where(Stands).Select(source => (StateOf(source), source))];

    /// <summary>The effect that forbids a step at any moment, or null.</summary>
    public RecordEffect? Of(Step step)
    {
        foreach (var source in _network.Forbidding(step))
            if (source.Record.Moments.Count == 0 && Stands(source, step)) return source;
        foreach (var source in _network.ForbiddingStatesOf(step.Part))
            if (source.Record.Moments.Count == 0 && Reaches(step, StateOf(source)) && Stands(source)) return source;
        return null;
    }

    /// <summary>The effects that forbid a step at some moments only.</summary>
    public IEnumerable<RecordEffect> AtMoments(Step step) => _network.Forbidding(step).Where(source => source.Record.Moments.Count > 0 && Stands(source, step));

    private bool Stands(RecordEffect source, Step step) => source.Effect.Conclusion is Conclusion.ForbidStep
        ? beliefs.Given(source.Record, source.Index, step) > Assurance.No && beliefs.Purposes.Serve(source.Record, step)
        : Stands(source);

    private bool Stands(RecordEffect source) => beliefs.Available(source.Record, source.Index) > Assurance.No && beliefs.Purposes.Serve(source.Record);

    private static bool Reaches(Step step, GroundState state)
    {
        foreach (var change in step.Operation.Changes)
            if (ReferenceEquals(change.Aspect, state.Aspect) && change.To >= 0 && state.States.Has(change.To)) return true;
        return false;
    }

    private static GroundState StateOf(RecordEffect source)
    {
        var state = ((Conclusion.ForbidState)source.Effect.Conclusion!).State;
        return new GroundState(source.Record.Binding.Part(state.Slot), state.Aspect, state.States);
    }
}
