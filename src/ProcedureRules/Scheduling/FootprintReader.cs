using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Packs;
using ProcedureRules.Plans;
using ProcedureRules.Validating;

namespace ProcedureRules.Scheduling;

/// <summary>
/// Reads the footprint of each step of a plan from what its check looks at: states it starts from and needs, moments of everything said about it,
/// what is kept meanwhile, what is forbidden, what is passed. No value of a state is relied upon, so that the footprints also stand where a check
/// turns out otherwise and steps drop out.
/// </summary>
internal sealed class FootprintReader
{
    private readonly Plan _plan;
    private readonly PlanLaws _laws;
    private readonly Dictionary<object, int> _numbers = [];
    private readonly Footprint[] _footprints;

    private FootprintReader(Plan plan)
    {
        _plan = plan;
        _laws = new PlanLaws(plan.Beliefs, [.. plan.Steps.Select(step => step.Step)]);
        _footprints = [.. plan.Steps.Select(_ => new Footprint())];
    }

    /// <summary>The footprints of the steps, in their order.</summary>
    public static IReadOnlyList<Footprint> Of(Plan plan)
    {
        var reader = new FootprintReader(plan);
        for (var i = 0; i < plan.Steps.Count; i++) reader.ReadStates(plan.Steps[i].Step, reader._footprints[i]);
        for (var i = 0; i < plan.Steps.Count; i++) reader.ReadParts(plan.Steps[i], reader._footprints[i]);
        foreach (var (during, kept, _) in reader._laws.Whiles) reader.ReadWhile(during, kept);
        foreach (var (state, record) in reader._laws.ForbiddenStates) reader.Bind(record, [state, .. record.Moments]);
        foreach (var states in reader._laws.Waypoints) reader.Bind(states, states);
        return reader._footprints;
    }

    private void ReadStates(Step step, Footprint footprint)
    {
        foreach (var change in step.Operation.Changes) footprint.Writes.Add(Number(step.Part, change.Aspect));
        foreach (var (state, record) in _laws.NeedsOf(step)) Read(footprint, [state, .. record.Moments]);
        foreach (var (_, record) in _laws.OrdersOf(step)) Read(footprint, record.Moments);
        foreach (var record in _laws.ProhibitionsOf(step)) Read(footprint, record.Moments);
        foreach (var source in _plan.Beliefs.Network.RecordsAbout(step)) Read(footprint, source.Record.Moments);
        foreach (var fact in _plan.Situation.Vocabulary.FactsOf(step.Part.Kind))
            if (fact.FindOperation == step.Operation.Name)
                foreach (var path in fact.TakenIn) ReadAspect(path, footprint);
    }

    // A reading rests on states of parts of a kind, or of its own part.
    private void ReadAspect(string path, Footprint footprint)
    {
        var names = path.Split('.');
        foreach (var part in _plan.Situation.Parts)
            if (_plan.Situation.Vocabulary.AspectOf(part.Kind, names[^1]) is { } aspect) footprint.Reads.Add(Number(part, aspect));
    }

    // Nobody works on a part while another works on it or moves it. What makes ready and safe comes before the first bolt, and what proves the
    // work after the last: these stay where they stand in the plan, and nothing runs beside them.
    private void ReadParts(PlanStep planned, Footprint footprint)
    {
        var (operation, part) = planned.Step;
        footprint.Writes.Add(Number(part));
        foreach (var other in _plan.Situation.Parts)
            if (operation.Moves.Any(other.Kind.IsA)) footprint.Writes.Add(Number(other));
        (planned.Phase is Phase.Prepare or Phase.Prove ? footprint.Writes : footprint.Reads).Add(Number(nameof(Phase)));
    }

    // Only steps that can enter or leave what lasts, or what is kept meanwhile, have to stay in their order.
    private void ReadWhile(GroundState during, GroundState kept)
    {
        var entering = Changers(during, change => change.To < 0 || during.States.Has(change.To) || (change.From.Bits & during.States.Bits) != 0);
        var leaving = Changers(kept, change => change.To < 0 || !kept.States.Has(change.To) || (change.From.Bits & ~kept.States.Bits) != 0);
        if (entering.Count == 0 || leaving.Count == 0) return;
        var number = Number((during, kept));
        foreach (var i in entering.Concat(leaving)) _footprints[i].Writes.Add(number);
    }

    private List<int> Changers(GroundState state, Func<StateChange, bool> isMeant)
    {
        var changers = new List<int>();
        for (var i = 0; i < _plan.Steps.Count; i++)
        {
            var step = _plan.Steps[i].Step;
            if (ReferenceEquals(step.Part, state.Part) && step.Operation.Changes.Any(change => ReferenceEquals(change.Aspect, state.Aspect) && isMeant(change))) changers.Add(i);
        }
        return changers;
    }

    // All that change one of some states stay in their order.
    private void Bind(object law, IEnumerable<GroundState> states)
    {
        var number = Number(law);
        foreach (var state in states)
            foreach (var i in Changers(state, _ => true)) _footprints[i].Writes.Add(number);
    }

    private void Read(Footprint footprint, IEnumerable<GroundState> states)
    {
        foreach (var state in states) footprint.Reads.Add(Number(state.Part, state.Aspect));
    }

    private int Number(Part part, Aspect aspect) => Number((part, aspect));

    private int Number(object key)
    {
        if (!_numbers.TryGetValue(key, out var number)) _numbers[key] = number = _numbers.Count;
        return number;
    }
}
