using ProcedureRules.Beliefs;
using ProcedureRules.Choosing;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;

namespace ProcedureRules.Ordering;

/// <summary>Reads from beliefs which steps are due, which may be drawn in when a moment asks for them, and what each one needs.</summary>
internal sealed class Requirements
{
    private readonly BeliefState _beliefs;
    private readonly BeliefNetwork _network;
    private readonly Situation _situation;
    private readonly Prohibitions _prohibitions;
    private readonly Dictionary<StateVariable, int> _indices = [];
    private readonly List<StateVariable> _variables = [];
    private readonly Dictionary<Step, Work> _byStep = [];
    private readonly List<Work> _works = [];
    private readonly List<OrderEdge> _edges = [];

    private Requirements(BeliefState beliefs)
    {
        _beliefs = beliefs;
        _network = beliefs.Network;
        _situation = _network.Result.Situation;
        _prohibitions = new Prohibitions(beliefs);
    }

    /// <summary>The world under some beliefs; checks are steps that only find something out: due as well, each before what it settles.</summary>
    public static World Under(BeliefState beliefs, IReadOnlyCollection<CheckStep> checks) => new Requirements(beliefs).Build(checks);

    /// <summary>Whether a step has to occur whatever the moments are, for more than to undo another one.</summary>
    public static bool IsDue(BeliefState beliefs, Atom.Occurs occurs) =>
        beliefs.Required(occurs) >= Assurance.Provisional
        && beliefs.Network.RecordsSupporting(occurs).Any(support => support.Record.Mechanism != Mechanism.Undo
            && beliefs.Required(support.Record, support.Index) >= Assurance.Provisional);

    private World Build(IReadOnlyCollection<CheckStep> checks)
    {
        AddWorks(checks.Select(check => check.Step).ToHashSet());
        foreach (var work in _works) Equip(work);
        AddEdges();
        foreach (var check in checks)
            foreach (var settled in check.Settles) AddEdge(null, check.Step, settled);
        var jobEnds = JobEnds();
        foreach (var work in _works) work.IsReturned = HasToComeBack(work, jobEnds);
        var wanting = Wanting();
        foreach (var work in _works) work.Serves = ServedOnTheWayBack(work, jobEnds, wanting);
        var forbidden = _prohibitions.States
            .Select(state => (GuardOf(state.State), (IReadOnlyList<Guard>)GuardsOf(state.Source.Record))).ToList();
        var waypoints = Waypoints();
        var keepings = Keepings();
        var ends = Ends(jobEnds);
        return new World
        {
            Beliefs = _beliefs,
            Variables = _variables,
            Indices = _indices,
            Start = [.. _variables.Select(_situation.StateNow)],
            Works = _works,
            ByStep = _byStep,
            Edges = _edges,
            Keepings = keepings,
            Forbidden = forbidden,
            Ends = ends,
            Waypoints = waypoints,
        };
    }

    private void AddWorks(HashSet<Step> checks)
    {
        var places = _network.Result.Rules.Vocabulary.Places;
        var occurring = _network.AtomsOf<Atom.Occurs>()
            .Where(atom => (_beliefs.Available(atom) >= Assurance.Provisional || checks.Contains(atom.Step)) && _prohibitions.Of(atom.Step) is null)
            .OrderBy(atom => atom.Step.Name, StringComparer.Ordinal);
        foreach (var atom in occurring)
        {
            var supports = _network.RecordsSupporting(atom)
                .Where(support => _beliefs.Available(support.Record, support.Index) >= Assurance.Provisional).ToList();
            var work = new Work
            {
                Index = _works.Count,
                Step = atom.Step,
                IsDue = checks.Contains(atom.Step) || IsDue(_beliefs, atom),
                IsOnlyUndoing = supports.Count > 0 && supports.All(support => support.Record.Mechanism == Mechanism.Undo),
                Place = Math.Max(0, places.ToList().IndexOf(atom.Step.Operation.Place)),
            };
            _works.Add(work);
            _byStep[atom.Step] = work;
        }
        foreach (var work in _works)
        {
            if (work.Step.Operation.UndoneBy is not { } undoing || !_byStep.TryGetValue(new Step(undoing, work.Step.Part), out var back)) continue;
            work.UndoneBy = back;
            back.Undoes = work;
        }
    }

    private void Equip(Work work)
    {
        var step = work.Step;
        work.Shifts = [.. step.Operation.Changes.Select(change => new Shift(Variable(step.Part, change.Aspect), change.From, change.To))];
        var needs = new List<Condition>();
        foreach (var (source, level) in _beliefs.SaidOf(step))
        {
            if (level < Assurance.Provisional || source.Effect.Conclusion is not Conclusion.Need { Step: >= 0 } need || !source.Record.Binding.Step(need.Step).Equals(step)) continue;
            needs.Add(new Condition(GuardOf(source.Record, need.State), GuardsOf(source.Record), source));
        }
        work.Needs = [.. needs
            .OrderBy(need => _variables[need.Wanted.Variable].Part.Name, StringComparer.Ordinal)
            .ThenBy(need => _variables[need.Wanted.Variable].Aspect.Name, StringComparer.Ordinal)
            .ThenBy(need => need.Wanted.States.Bits)
            .ThenBy(need => need.Source.Record.Rule?.Name, StringComparer.Ordinal)];
        work.ForbiddenWhen = [.. _prohibitions.AtMoments(step).Select(source => GuardsOf(source.Record))];
    }

    private void AddEdges()
    {
        foreach (var source in _network.RecordsWith<Conclusion.Order>())
        {
            var order = (Conclusion.Order)source.Effect.Conclusion!;
            AddEdge(source, source.Record.Binding.Step(order.First), source.Record.Binding.Step(order.Second));
        }
        foreach (var source in _network.RecordsWith<Conclusion.Do>())
        {
            var added = (Conclusion.Do)source.Effect.Conclusion!;
            var step = new Step(added.Operation, source.Record.Binding.Part(added.Slot));
            if (added.Before >= 0) AddEdge(source, step, source.Record.Binding.Step(added.Before));
            if (added.After >= 0) AddEdge(source, source.Record.Binding.Step(added.After), step);
        }
    }

    private void AddEdge(RecordEffect? source, Step first, Step second)
    {
        if (first.Equals(second) || (source is { } effect && _beliefs.Available(effect.Record, effect.Index) == Assurance.No)) return;
        if (!_byStep.TryGetValue(first, out var firstWork) || !_byStep.TryGetValue(second, out var secondWork)) return;
        var edge = new OrderEdge(firstWork, secondWork, source is { } guarded ? GuardsOf(guarded.Record) : [], source);
        _edges.Add(edge);
        firstWork.Behind.Add(edge);
        secondWork.Before.Add(edge);
    }

    private Dictionary<int, EndState> JobEnds()
    {
        var ends = new Dictionary<int, EndState>();
        foreach (var source in _network.RecordsWith<Conclusion.Need>())
        {
            var need = (Conclusion.Need)source.Effect.Conclusion!;
            if (need.Step >= 0 || _beliefs.Required(source.Record, source.Index) < Assurance.Provisional) continue;
            var guard = GuardOf(source.Record, need.State);
            ends[guard.Variable] = ends.TryGetValue(guard.Variable, out var other)
                ? new EndState(guard with { States = new StateSet(guard.States.Bits & other.State.States.Bits) }, source)
                : new EndState(guard, source);
        }
        return ends;
    }

    // What a job wants left as it is need not come back, nor what only leads there; marks never do.
    private bool HasToComeBack(Work work, Dictionary<int, EndState> jobEnds)
    {
        if (work.UndoneBy is null) return false;
        var shifts = work.Shifts.Where(shift => !_variables[shift.Variable].Aspect.IsMark).ToList();
        if (shifts.Count == 0) return work.Shifts.Length == 0;
        return shifts.Any(shift => !jobEnds.TryGetValue(shift.Variable, out var end)
            || (!end.State.States.Has(shift.To) && (shift.From.Bits & end.State.States.Bits) != 0));
    }

    // For each variable the steps that find or need it in some of its states, in their order.
    private List<(Work Work, StateSet States)>[] Wanting()
    {
        var wanting = new List<(Work, StateSet)>[_variables.Count];
        for (var i = 0; i < wanting.Length; i++) wanting[i] = [];
        foreach (var work in _works)
        {
            foreach (var need in work.Needs) wanting[need.Wanted.Variable].Add((work, need.Wanted.States));
            foreach (var shift in work.Shifts) wanting[shift.Variable].Add((work, shift.From));
        }

        return wanting;
    }

    // What is needed by steps of the way back only (a new seal, a tool that holds while something is tightened) is done when their turn comes.
    private List<Work> ServedOnTheWayBack(Work work, Dictionary<int, EndState> jobEnds, List<(Work Work, StateSet States)>[] wanting)
    {
        if (!work.IsDue || work.Shifts.Length == 0 || work.Step.Operation.Undoes is not null) return [];
        var served = new List<Work>();
        foreach (var shift in work.Shifts)
        {
            var (part, aspect) = _variables[shift.Variable];
            var now = _situation.StateNow(part, aspect);
            if (shift.To < 0 || (jobEnds.TryGetValue(shift.Variable, out var end) && end.State.States.Has(shift.To) && !end.State.States.Has(now))) return [];
            foreach (var (other, states) in wanting[shift.Variable])
            {
                if (ReferenceEquals(other, work) || ReferenceEquals(other, work.UndoneBy) || !states.Has(shift.To) || states.Has(now)) continue;
                if (!other.IsWayBack) return [];
                if (!served.Contains(other)) served.Add(other);
            }
        }
        return IsAskedFor(work) ? [] : served;
    }

    // Work that a rule or the job adds has a purpose of its own.
    private bool IsAskedFor(Work work) => _network.RecordsSupporting(new Atom.Occurs(work.Step))
        .Any(support => support.Effect.Conclusion is Conclusion.Do && _beliefs.Required(support.Record, support.Index) >= Assurance.Provisional);

    private List<EndState> Ends(Dictionary<int, EndState> jobEnds)
    {
        var ends = new List<EndState>();
        for (var i = 0; i < _variables.Count; i++)
        {
            if (jobEnds.TryGetValue(i, out var end)) ends.Add(end);
            else if (!_variables[i].Aspect.IsMark && (CanChange(i) || _situation.StateNow(_variables[i].Part, _variables[i].Aspect) == _variables[i].Aspect.Normal))
                ends.Add(new EndState(new Guard(i, StateSet.Of(_variables[i].Aspect.Normal)), null));
        }
        return ends;
    }

    private bool CanChange(int variable) => _works.Any(work => work.Shifts.Any(shift => shift.Variable == variable));

    private List<IReadOnlyList<Guard>> Waypoints()
    {
        var all = new List<IReadOnlyList<Guard>>();
        foreach (var source in _network.RecordsWith<Conclusion.Waypoints>())
            if (_beliefs.Required(source.Record, source.Index) >= Assurance.Provisional)
                all.Add([.. ((Conclusion.Waypoints)source.Effect.Conclusion!).States.Select(state => GuardOf(source.Record, state))]);
        return all;
    }

    private List<Keeping> Keepings()
    {
        var keepings = new List<Keeping>();
        var vocabulary = _network.Result.Rules.Vocabulary;
        var parts = _situation.Parts.Where(part => _beliefs.Exists(part) != Truth.No).OrderBy(part => part.Name, StringComparer.Ordinal).ToList();
        foreach (var source in _network.Result.Rules.Whiles)
            foreach (var part in parts)
            {
                if (!ReferenceEquals(vocabulary.AspectOf(part.Kind, source.Aspect.Name), source.Aspect)) continue;
                var others = source.Other is null ? [part] : parts.Where(other => other.Kind.IsA(source.Other));
                foreach (var other in others)
                    keepings.Add(new Keeping(
                        new Guard(Variable(part, source.Aspect), StateSet.Of(source.State)),
                        new Guard(Variable(other, source.OtherAspect), source.States), source));
            }
        return keepings;
    }

    private Guard GuardOf(Record record, StateCondition condition) =>
        new(Variable(record.Binding.Part(condition.Slot), condition.Aspect), condition.States);

    private Guard GuardOf(GroundState state) => new(Variable(state.Part, state.Aspect), state.States);

    private List<Guard> GuardsOf(Record record) => [.. record.Moments.Select(GuardOf)];

    private int Variable(Part part, Aspect aspect)
    {
        var variable = new StateVariable(part, aspect);
        if (_indices.TryGetValue(variable, out var index)) return index;
        _indices[variable] = _variables.Count;
        _variables.Add(variable);
        return _variables.Count - 1;
    }
}
