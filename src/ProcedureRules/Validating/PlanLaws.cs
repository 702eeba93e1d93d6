using ProcedureRules.Beliefs;
using ProcedureRules.Choosing;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Plans;

namespace ProcedureRules.Validating;

/// <summary>
/// What has to hold in a plan, read from the records for its check: under some beliefs, and as far as it counted under those that the plan
/// was made with, since what the plan holds for is judged by another plan when it is known.
/// </summary>
internal sealed class PlanLaws
{
    private readonly BeliefState _beliefs;
    private readonly BeliefState _planned;
    private readonly Candidates _candidates;
    private readonly List<RecordEffect> _counted = [];
    private readonly Dictionary<Step, List<(GroundState State, Record Record)>> _needs = [];
    private readonly Dictionary<Step, List<(Step First, Record Record)>> _orders = [];
    private readonly Dictionary<Step, List<Record>> _forbidden = [];
    private readonly List<(RecordEffect Source, Step Step)> _doubtful = [];
    private readonly List<(GroundState State, Record Record)> _forbiddenStates = [];
    private readonly List<(GroundState While, GroundState Kept, string Text)> _whiles = [];
    private readonly Dictionary<StateVariable, ulong> _ends = [];
    private readonly List<List<GroundState>> _waypoints = [];

    /// <summary>What has to hold in a plan under the beliefs that it was made with.</summary>
    public PlanLaws(BeliefState planned, HashSet<Step> inPlan)
        : this(planned, planned, new Candidates(planned, inPlan), planned.Network.RecordsWith<Conclusion.Need>(), inPlan)
    {
    }

    private PlanLaws(BeliefState beliefs, BeliefState planned, Candidates candidates, IReadOnlyList<RecordEffect> needs, HashSet<Step> inPlan)
    {
        (_beliefs, _planned, _candidates) = (beliefs, planned, candidates);
        ReadNeeds(needs, inPlan);
        ReadOrders(inPlan);
        ReadProhibitions(inPlan);
        ReadWhiles();
        foreach (var source in beliefs.Network.RecordsWith<Conclusion.Waypoints>())
            if (IsRequired(source)) _waypoints.Add([.. ((Conclusion.Waypoints)source.Effect.Conclusion!).States.Select(state => Ground(source.Record, state))]);
    }

    /// <summary>What a step needs, with the records whose moments say when.</summary>
    public IReadOnlyList<(GroundState State, Record Record)> NeedsOf(Step step) => _needs.GetValueOrDefault(step, []);

    /// <summary>What comes before a step.</summary>
    public IReadOnlyList<(Step First, Record Record)> OrdersOf(Step step) => _orders.GetValueOrDefault(step, []);

    /// <summary>What forbids a step.</summary>
    public IReadOnlyList<Record> ProhibitionsOf(Step step) => _forbidden.GetValueOrDefault(step, []);

    /// <summary>What may forbid a step, and a plan that is tentative holds before it for.</summary>
    public IEnumerable<Record> DoubtsOf(Step step) => _doubtful.Where(doubt => doubt.Step.Equals(step)).Select(doubt => doubt.Source.Record);

    /// <summary>States that may not be.</summary>
    public IReadOnlyList<(GroundState State, Record Record)> ForbiddenStates => _forbiddenStates;

    /// <summary>What is kept while a state lasts.</summary>
    public IReadOnlyList<(GroundState While, GroundState Kept, string Text)> Whiles => _whiles;

    /// <summary>The states that jobs end with.</summary>
    public IReadOnlyDictionary<StateVariable, ulong> Ends => _ends;

    /// <summary>The states to pass in order.</summary>
    public IReadOnlyList<List<GroundState>> Waypoints => _waypoints;

    /// <summary>What of it has to hold under other beliefs, where some of the steps are left.</summary>
    public PlanLaws Under(BeliefState beliefs, HashSet<Step> inPlan) => new(beliefs, _planned, _candidates, _counted, inPlan);

    /// <summary>
    /// Whether the plan stands under one answer as it was made: all its steps are done there, what jobs end with is the same (what none ends
    /// with goes back), and no doubt about a step has become a prohibition. An answer only takes away from what is possible, so no other law binds
    /// that did not bind before.
    /// </summary>
    public bool Stand(BeliefState answered, IReadOnlyList<PlanStep> steps)
    {
        foreach (var atom in answered.AtomsUnlike(_beliefs))
            if (atom is Atom.Occurs && _beliefs.Available(atom) >= Assurance.Provisional && answered.Available(atom) < Assurance.Provisional) return false;
        foreach (var end in _counted)
            if (end.Effect.Conclusion is Conclusion.Need { Step: < 0 } && answered.Required(end.Record, end.Index) < Assurance.Provisional) return false;
        foreach (var (source, step) in _doubtful)
            if (!Prohibitions.IsWaiting(answered, source, LevelOf(answered, source, step))) return false;
        foreach (var step in steps)
            if (_beliefs.Available(new Atom.Occurs(step.Step)) == Assurance.Held) return false;
        return true;
    }

    /// <summary>Whether a step has to occur.</summary>
    public bool IsRequired(Atom atom) => _beliefs.Required(atom) >= Assurance.Provisional && _planned.Required(atom) >= Assurance.Provisional;

    private bool IsRequired(RecordEffect source) =>
        _beliefs.Required(source.Record, source.Index) >= Assurance.Provisional && _planned.Required(source.Record, source.Index) >= Assurance.Provisional;

    private void ReadNeeds(IReadOnlyList<RecordEffect> needs, HashSet<Step> inPlan)
    {
        foreach (var source in needs)
        {
            var need = (Conclusion.Need)source.Effect.Conclusion!;
            var state = Ground(source.Record, need.State);
            if (need.Step < 0)
            {
                var key = state.Variable;
                if (!IsRequired(source)) continue;
                _counted.Add(source);
                _ends[key] = _ends.GetValueOrDefault(key, ulong.MaxValue) & state.States.Bits;
                continue;
            }
            var step = source.Record.Binding.Step(need.Step);
            if (!IsAboutPlan(source.Record, inPlan)) continue;
            if (_beliefs.Given(source.Record, source.Index, step) < Assurance.Provisional || !CountedWhenPlanned(source, step)) continue;
            _counted.Add(source);
            Add(_needs, step, (state, source.Record));
        }
    }

    private static bool IsAboutPlan(Record record, HashSet<Step> inPlan)
    {
        foreach (var premise in record.Premises)
            if (premise is Atom.Occurs occurs && !inPlan.Contains(occurs.Step)) return false;
        return true;
    }

    private bool CountedWhenPlanned(RecordEffect source, Step step) =>
        ReferenceEquals(_beliefs, _planned) || _planned.Given(source.Record, source.Index, step) >= Assurance.Provisional;

    private void ReadOrders(HashSet<Step> inPlan)
    {
        foreach (var (source, first, second) in _candidates.Orders)
            if (inPlan.Contains(first) && inPlan.Contains(second) && _beliefs.Available(source.Record, source.Index) > Assurance.No) Add(_orders, second, (first, source.Record));
    }

    private void ReadProhibitions(HashSet<Step> inPlan)
    {
        foreach (var (source, step) in _candidates.Forbidden)
        {
            if (!inPlan.Contains(step) || !IsAboutPlan(source.Record, inPlan)) continue;
            var level = LevelOf(_beliefs, source, step);
            if (level == Assurance.No) continue;
            if (Prohibitions.IsWaiting(_beliefs, source, level)) _doubtful.Add((source, step));
            else Add(_forbidden, step, source.Record);
        }
        foreach (var source in _beliefs.Network.RecordsWith<Conclusion.ForbidState>())
        {
            var level = _beliefs.Available(source.Record, source.Index);
            if (level == Assurance.No || !IsAboutPlan(source.Record, inPlan)) continue;
            var state = Ground(source.Record, ((Conclusion.ForbidState)source.Effect.Conclusion!).State);
            if (!Prohibitions.IsWaiting(_beliefs, source, level)) _forbiddenStates.Add((state, source.Record));
            else
                foreach (var step in inPlan)
                    if (state.IsReachedBy(step)) _doubtful.Add((source, step));
        }
    }

    private static Assurance LevelOf(BeliefState beliefs, RecordEffect source, Step step) => source.Effect.Conclusion is Conclusion.ForbidStep
        ? beliefs.Given(source.Record, source.Index, step)
        : beliefs.Available(source.Record, source.Index);

    private void ReadWhiles()
    {
        foreach (var law in _candidates.Whiles)
            if (_beliefs.Exists(law.While.Part) != Truth.No && _beliefs.Exists(law.Kept.Part) != Truth.No) _whiles.Add(law);
    }

    private static GroundState Ground(Record record, StateCondition state) => new(record.Binding.Part(state.Slot), state.Aspect, state.States);

    private static void Add<T>(Dictionary<Step, List<T>> lists, Step step, T item)
    {
        if (!lists.TryGetValue(step, out var list)) lists[step] = list = [];
        list.Add(item);
    }

    /// <summary>What could bind the steps of a plan under any beliefs: read once, judged under each.</summary>
    private sealed class Candidates
    {
        public Candidates(BeliefState planned, HashSet<Step> inPlan)
        {
            var network = planned.Network;
            foreach (var source in network.RecordsWith<Conclusion.Order>())
                if (source.Effect.Conclusion is Conclusion.Order order) Order(source, source.Record.Binding.Step(order.First), source.Record.Binding.Step(order.Second), inPlan);
            foreach (var source in network.RecordsWith<Conclusion.Do>())
            {
                var added = (Conclusion.Do)source.Effect.Conclusion!;
                var step = new Step(added.Operation, source.Record.Binding.Part(added.Slot));
                if (added.Before >= 0) Order(source, step, source.Record.Binding.Step(added.Before), inPlan);
                if (added.After >= 0) Order(source, source.Record.Binding.Step(added.After), step, inPlan);
            }
            Forbidden = [.. inPlan.SelectMany(step => network.Forbidding(step).Select(source => (source, step)))];
            ReadWhiles(planned);
        }

        public List<(RecordEffect Source, Step First, Step Second)> Orders { get; } = [];

        public IReadOnlyList<(RecordEffect Source, Step Step)> Forbidden { get; }

        public List<(GroundState While, GroundState Kept, string Text)> Whiles { get; } = [];

        private void Order(RecordEffect source, Step first, Step second, HashSet<Step> inPlan)
        {
            if (!first.Equals(second) && inPlan.Contains(first) && inPlan.Contains(second)) Orders.Add((source, first, second));
        }

        private void ReadWhiles(BeliefState planned)
        {
            var rules = planned.Network.Result.Rules;
            var parts = planned.Network.Result.Situation.Parts.Where(part => planned.Exists(part) != Truth.No).ToList();
            foreach (var law in rules.Whiles)
                foreach (var part in parts)
                {
                    if (!part.Kind.IsA(law.Aspect.Kind) || !ReferenceEquals(rules.Vocabulary.AspectOf(part.Kind, law.Aspect.Name), law.Aspect)) continue;
                    foreach (var other in parts)
                        if (law.Other is null ? ReferenceEquals(other, part) : other.Kind.IsA(law.Other))
                            Whiles.Add((new GroundState(part, law.Aspect, StateSet.Of(law.State)), new GroundState(other, law.OtherAspect, law.States), law.Text));
                }
        }
    }
}
