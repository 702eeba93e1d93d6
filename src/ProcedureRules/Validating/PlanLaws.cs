using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;

namespace ProcedureRules.Validating;

/// <summary>
/// What has to hold in a plan, read from the records for its check: under some beliefs, and as far as it counted under those that the plan
/// was made with, since what the plan holds for is judged by another plan when it is known.
/// </summary>
internal sealed class PlanLaws
{
    private readonly BeliefState _beliefs;
    private readonly BeliefState _planned;
    private readonly List<RecordEffect> _counted = [];
    private readonly Dictionary<Step, List<(GroundState State, Record Record)>> _needs = [];
    private readonly Dictionary<Step, List<(Step First, Record Record)>> _orders = [];
    private readonly Dictionary<Step, List<Record>> _forbidden = [];
    private readonly List<(GroundState State, Record Record)> _forbiddenStates = [];
    private readonly List<(GroundState While, GroundState Kept, string Text)> _whiles = [];
    private readonly Dictionary<(Part, Aspect), ulong> _ends = [];
    private readonly List<List<GroundState>> _waypoints = [];

    /// <summary>What has to hold in a plan under the beliefs that it was made with.</summary>
    public PlanLaws(BeliefState planned, HashSet<Step> inPlan)
        : this(planned, planned, planned.Network.RecordsWith<Conclusion.Need>(), inPlan)
    {
    }

    private PlanLaws(BeliefState beliefs, BeliefState planned, IEnumerable<RecordEffect> needs, HashSet<Step> inPlan)
    {
        (_beliefs, _planned) = (beliefs, planned);
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

    /// <summary>States that may not be.</summary>
    public IReadOnlyList<(GroundState State, Record Record)> ForbiddenStates => _forbiddenStates;

    /// <summary>What is kept while a state lasts.</summary>
    public IReadOnlyList<(GroundState While, GroundState Kept, string Text)> Whiles => _whiles;

    /// <summary>The states that jobs end with.</summary>
    public IReadOnlyDictionary<(Part Part, Aspect Aspect), ulong> Ends => _ends;

    /// <summary>The states to pass in order.</summary>
    public IReadOnlyList<List<GroundState>> Waypoints => _waypoints;

    /// <summary>What of it has to hold under other beliefs, where some of the steps are left.</summary>
    public PlanLaws Under(BeliefState beliefs, HashSet<Step> inPlan) => new(beliefs, _planned, _counted, inPlan);

    /// <summary>Whether a step has to occur.</summary>
    public bool IsRequired(Atom atom) => _beliefs.Required(atom) >= Assurance.Provisional && _planned.Required(atom) >= Assurance.Provisional;

    private bool IsRequired(RecordEffect source) =>
        _beliefs.Required(source.Record, source.Index) >= Assurance.Provisional && _planned.Required(source.Record, source.Index) >= Assurance.Provisional;

    private void ReadNeeds(IEnumerable<RecordEffect> needs, HashSet<Step> inPlan)
    {
        foreach (var source in needs)
        {
            var need = (Conclusion.Need)source.Effect.Conclusion!;
            var state = Ground(source.Record, need.State);
            if (need.Step < 0)
            {
                var key = (state.Part, state.Aspect);
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

    private static bool IsAboutPlan(Record record, HashSet<Step> inPlan) =>
        record.Premises.All(premise => premise is not Atom.Occurs occurs || inPlan.Contains(occurs.Step));

    private bool CountedWhenPlanned(RecordEffect source, Step step) =>
        ReferenceEquals(_beliefs, _planned) || _planned.Given(source.Record, source.Index, step) >= Assurance.Provisional;

    private void ReadOrders(HashSet<Step> inPlan)
    {
        foreach (var source in _beliefs.Network.RecordsWith<Conclusion.Order>())
            if (source.Effect.Conclusion is Conclusion.Order order) Order(source, source.Record.Binding.Step(order.First), source.Record.Binding.Step(order.Second), inPlan);
        foreach (var source in _beliefs.Network.RecordsWith<Conclusion.Do>())
        {
            var added = (Conclusion.Do)source.Effect.Conclusion!;
            var step = new Step(added.Operation, source.Record.Binding.Part(added.Slot));
            if (added.Before >= 0) Order(source, step, source.Record.Binding.Step(added.Before), inPlan);
            if (added.After >= 0) Order(source, source.Record.Binding.Step(added.After), step, inPlan);
        }
    }

    private void Order(RecordEffect source, Step first, Step second, HashSet<Step> inPlan)
    {
        if (first.Equals(second) || !inPlan.Contains(first) || !inPlan.Contains(second)) return;
        if (_beliefs.Available(source.Record, source.Index) > Assurance.No) Add(_orders, second, (first, source.Record));
    }

    private void ReadProhibitions(HashSet<Step> inPlan)
    {
        foreach (var source in _beliefs.Network.RecordsWith<Conclusion.ForbidStep>())
        {
            var step = source.Record.Binding.Step(((Conclusion.ForbidStep)source.Effect.Conclusion!).Step);
            if (inPlan.Contains(step) && IsAboutPlan(source.Record, inPlan) && _beliefs.Given(source.Record, source.Index, step) > Assurance.No) Add(_forbidden, step, source.Record);
        }
        foreach (var source in _beliefs.Network.RecordsWith<Conclusion.ForbidWork>())
        {
            var work = (Conclusion.ForbidWork)source.Effect.Conclusion!;
            var step = new Step(work.Operation, source.Record.Binding.Part(work.Slot));
            if (inPlan.Contains(step) && IsAboutPlan(source.Record, inPlan) && _beliefs.Available(source.Record, source.Index) > Assurance.No) Add(_forbidden, step, source.Record);
        }
        foreach (var source in _beliefs.Network.RecordsWith<Conclusion.ForbidState>())
            if (IsAboutPlan(source.Record, inPlan) && _beliefs.Available(source.Record, source.Index) > Assurance.No)
                _forbiddenStates.Add((Ground(source.Record, ((Conclusion.ForbidState)source.Effect.Conclusion!).State), source.Record));
    }

    private void ReadWhiles()
    {
        var rules = _beliefs.Network.Result.Rules;
        var parts = _beliefs.Network.Result.Situation.Parts.Where(part => _beliefs.Exists(part) != Truth.No).ToList();
        foreach (var law in rules.Whiles)
            foreach (var part in parts)
            {
                if (!part.Kind.IsA(law.Aspect.Kind) || !ReferenceEquals(rules.Vocabulary.AspectOf(part.Kind, law.Aspect.Name), law.Aspect)) continue;
                foreach (var other in parts)
                    if (law.Other is null ? ReferenceEquals(other, part) : other.Kind.IsA(law.Other))
                        _whiles.Add((new GroundState(part, law.Aspect, StateSet.Of(law.State)), new GroundState(other, law.OtherAspect, law.States), law.Text));
            }
    }

    private static GroundState Ground(Record record, StateCondition state) => new(record.Binding.Part(state.Slot), state.Aspect, state.States);

    private static void Add<T>(Dictionary<Step, List<T>> lists, Step step, T item)
    {
        if (!lists.TryGetValue(step, out var list)) lists[step] = list = [];
        list.Add(item);
    }
}
