using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;

namespace ProcedureRules.Choosing;

/// <summary>What may not occur under some beliefs. A possible prohibition stands as if it were sure, unless it rests on a step that only finds something out.</summary>
internal sealed class Prohibitions
{
    private readonly Dictionary<Step, List<RecordEffect>> _steps = [];
    private readonly List<(GroundState State, RecordEffect Source)> _states = [];

    private Prohibitions() { }

    /// <summary>States that may not occur, with their effects.</summary>
    public IReadOnlyList<(GroundState State, RecordEffect Source)> States => _states;

    public static Prohibitions Under(BeliefState beliefs)
    {
        var prohibitions = new Prohibitions();
        var network = beliefs.Network;
        foreach (var source in network.RecordsWith<Conclusion.ForbidStep>())
        {
            var step = source.Record.Binding.Step(((Conclusion.ForbidStep)source.Effect.Conclusion!).Step);
            if (beliefs.Given(source.Record, source.Index, step) > Assurance.No && beliefs.Purposes.Serve(source.Record, step)) prohibitions.Add(step, source);
        }
        foreach (var source in network.RecordsWith<Conclusion.ForbidWork>())
        {
            var forbid = (Conclusion.ForbidWork)source.Effect.Conclusion!;
            if (beliefs.Available(source.Record, source.Index) > Assurance.No && beliefs.Purposes.Serve(source.Record))
                prohibitions.Add(new Step(forbid.Operation, source.Record.Binding.Part(forbid.Slot)), source);
        }
        foreach (var source in network.RecordsWith<Conclusion.ForbidState>())
        {
            var state = ((Conclusion.ForbidState)source.Effect.Conclusion!).State;
            if (beliefs.Available(source.Record, source.Index) > Assurance.No && beliefs.Purposes.Serve(source.Record))
                prohibitions._states.Add((new GroundState(source.Record.Binding.Part(state.Slot), state.Aspect, state.States), source));
        }
        return prohibitions;
    }

    /// <summary>The effect that forbids a step at any moment, or null.</summary>
    public RecordEffect? Of(Step step)
    {
        if (_steps.TryGetValue(step, out var sources))
            foreach (var source in sources)
                if (source.Record.Moments.Count == 0) return source;
        foreach (var (state, source) in _states)
        {
            if (source.Record.Moments.Count > 0 || !ReferenceEquals(state.Part, step.Part)) continue;
            foreach (var change in step.Operation.Changes)
                if (ReferenceEquals(change.Aspect, state.Aspect) && change.To >= 0 && state.States.Has(change.To)) return source;
        }
        return null;
    }

    /// <summary>The effects that forbid a step at some moments only.</summary>
    public IEnumerable<RecordEffect> AtMoments(Step step) =>
        _steps.TryGetValue(step, out var sources) ? sources.Where(source => source.Record.Moments.Count > 0) : [];

    private void Add(Step step, RecordEffect source)
    {
        if (!_steps.TryGetValue(step, out var sources)) _steps[step] = sources = [];
        sources.Add(source);
    }
}
