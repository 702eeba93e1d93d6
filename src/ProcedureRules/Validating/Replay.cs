using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Packs;
using ProcedureRules.Plans;

namespace ProcedureRules.Validating;

/// <summary>
/// Walks through a plan step by step and checks what must hold. It shares no code with the simulation that found the order, so that a
/// mistake there shows here.
/// </summary>
internal sealed class Replay
{
    private readonly PlanLaws _laws;
    private readonly BeliefState _beliefs;
    private readonly Situation _situation;
    private readonly IReadOnlyList<PlanStep> _steps;
    private readonly Dictionary<StateVariable, int> _now = [];
    private readonly Dictionary<Step, List<int[]>> _found = [];
    private readonly Dictionary<Step, (int Done, int ToCome)> _times = [];
    private readonly List<Violation> _violations = [];
    private bool _isOutcome;
    private int _at;

    private Replay(BeliefState beliefs, PlanLaws laws, IReadOnlyList<PlanStep> steps)
    {
        (_beliefs, _laws, _steps) = (beliefs, laws, steps);
        _situation = beliefs.Network.Result.Situation;
        foreach (var step in steps) _times[step.Step] = (0, Times(step.Step).ToCome + 1);
    }

    private Step Now => _steps[_at].Step;

    /// <summary>What is wrong with the steps under the beliefs that the plan was made with.</summary>
    public static IReadOnlyList<Violation> Of(BeliefState beliefs, PlanLaws laws, IReadOnlyList<PlanStep> steps)
    {
        var replay = new Replay(beliefs, laws, steps);
        replay.Walk(isWhole: true);
        return replay._violations;
    }

    /// <summary>
    /// What is wrong with the steps of a plan that are left under one answer to an open question. What such a step finds may differ from what
    /// the plan says, since steps before it are gone.
    /// </summary>
    public static IReadOnlyList<Violation> OfOutcome(BeliefState beliefs, PlanLaws laws, IReadOnlyList<PlanStep> steps, bool isWhole)
    {
        var replay = new Replay(beliefs, laws, steps) { _isOutcome = true };
        replay.Walk(isWhole);
        return replay._violations;
    }

    private void Walk(bool isWhole)
    {
        var passed = new int[_laws.Waypoints.Count];
        Pass(passed);
        var broken = Broken();
        for (_at = 0; _at < _steps.Count; _at++)
        {
            CheckOrder();
            foreach (var record in _laws.ProhibitionsOf(Now))
                if (IsNow(record)) Report("is forbidden");
            CheckStart();
            CheckNeeds(isEnd: false);
            var done = Change();
            CheckChanges(done);
            CheckNeeds(isEnd: true);
            _times[Now] = (Times(Now).Done + 1, Times(Now).ToCome - 1);
            if (done.Count == 0) continue;
            var brokenNow = Broken();
            foreach (var text in brokenNow)
                if (!broken.Contains(text)) Report($"breaks: {text}");
            broken = brokenNow;
            Pass(passed);
        }
        if (!isWhole) return;
        for (var i = 0; i < passed.Length; i++)
            if (passed[i] < _laws.Waypoints[i].Count) Report($"never passes {_laws.Waypoints[i][passed[i]]}");
        CheckEnd();
    }

    private int StateOf(StateVariable variable) => _now.TryGetValue(variable, out var state) ? state : _situation.StateNow(variable);

    private bool Is(GroundState state) => state.States.Has(StateOf(state.Variable));

    private bool IsNow(Record record)
    {
        foreach (var moment in record.Moments)
            if (!Is(moment)) return false;
        return true;
    }

    private (int Done, int ToCome) Times(Step step) => _times.GetValueOrDefault(step);

    private void CheckStart()
    {
        foreach (var change in Now.Operation.Changes)
            if (!change.From.Has(StateOf(new StateVariable(Now.Part, change.Aspect))))
                Report($"starts from {new GroundState(Now.Part, change.Aspect, change.From)}, which does not hold");
    }

    private void CheckNeeds(bool isEnd)
    {
        foreach (var (state, record) in _laws.NeedsOf(Now))
        {
            // At its end a step has changed what it changes, and moments are judged at its start.
            if (isEnd && (record.Moments.Count > 0 || Changes(state))) continue;
            if (!Is(state) && IsNow(record)) Report($"{(isEnd ? "ends" : "starts")} without {state}");
        }
    }

    private bool Changes(GroundState state)
    {
        if (!ReferenceEquals(Now.Part, state.Part)) return false;
        foreach (var change in Now.Operation.Changes)
            if (ReferenceEquals(change.Aspect, state.Aspect)) return true;
        return false;
    }

    private void CheckOrder()
    {
        foreach (var (first, record) in _laws.OrdersOf(Now))
        {
            if (!IsNow(record)) continue;
            var (before, toCome) = Times(first);
            var owed = first.Operation.Undoes is { } undone ? Times(new Step(undone, first.Part)).Done : 0;
            if (before == 0 || (toCome > 0 && owed > before)) Report($"comes before {first.Name}, which has to be done first");
        }
    }

    // What the plan says of a step's changes has to be what the step does.
    private void CheckChanges(List<(GroundState Before, GroundState After)> done)
    {
        var said = _steps[_at].Changes;
        if (!_isOutcome && (said.Count != done.Count || !done.TrueForAll(said.Contains))) Report("changes something else than the plan says");
    }

    private List<(GroundState Before, GroundState After)> Change()
    {
        var done = new List<(GroundState Before, GroundState After)>();
        if (!_found.TryGetValue(Now, out var stack)) _found[Now] = stack = [];
        stack.Add([.. Now.Operation.Changes.Select(change => StateOf(new StateVariable(Now.Part, change.Aspect)))]);
        var undone = Now.Operation.Undoes is { } operation ? new Step(operation, Now.Part) : null;
        var past = undone is not null && _found.TryGetValue(undone, out var open) && open.Count > 0 ? open : null;
        foreach (var change in Now.Operation.Changes)
        {
            var variable = new StateVariable(Now.Part, change.Aspect);
            var to = change.To;
            if (to < 0)
            {
                var index = undone is null ? -1 : undone.Operation.Changes.ToList().FindIndex(theirs => ReferenceEquals(theirs.Aspect, change.Aspect));
                if (past is null || index < 0) continue;
                to = past[^1][index];
            }
            var before = StateOf(variable);
            if (before != to) done.Add((new GroundState(Now.Part, change.Aspect, StateSet.Of(before)), new GroundState(Now.Part, change.Aspect, StateSet.Of(to))));
            _now[variable] = to;
        }
        past?.RemoveAt(past.Count - 1);
        return done;
    }

    // Whiles and forbidden states that do not hold now, in words.
    private List<string> Broken()
    {
        var broken = new List<string>();
        foreach (var (during, kept, text) in _laws.Whiles)
            if (Is(during) && !Is(kept)) broken.Add($"{text} ({during.Part.Name}, {kept.Part.Name})");
        foreach (var (state, record) in _laws.ForbiddenStates)
            if (Is(state) && IsNow(record)) broken.Add($"forbidden: {state}");
        return broken;
    }

    private void Pass(int[] passed)
    {
        for (var i = 0; i < passed.Length; i++)
            while (passed[i] < _laws.Waypoints[i].Count && Is(_laws.Waypoints[i][passed[i]])) passed[i]++;
    }

    private void CheckEnd()
    {
        foreach (var (variable, states) in _laws.Ends)
            if (!new StateSet(states).Has(StateOf(variable))) Report($"ends without {new GroundState(variable.Part, variable.Aspect, new StateSet(states))}");
        foreach (var (variable, state) in _now)
            if (variable is var (part, aspect) && !aspect.IsMark && !_laws.Ends.ContainsKey(variable) && state != aspect.Normal) Report($"ends with {new GroundState(part, aspect, StateSet.Of(state))}");
        CheckArrival();
        foreach (var step in _found.Keys)
            if (step.Operation is { Changes.Count: 0, UndoneBy: { } undoing } && _found.ContainsKey(new Step(undoing, step.Part))
                && LastOf(step) > LastOf(new Step(undoing, step.Part))) Report($"{step.Name} is never undone");
    }

    // What was not normal on arrival is not left so where a required step would bring it back.
    private void CheckArrival()
    {
        foreach (var (variable, state) in _situation.States)
        {
            var (part, aspect) = variable;
            if (aspect.IsMark || state == aspect.Normal || _now.ContainsKey(variable) || _laws.Ends.ContainsKey(variable)) continue;
            foreach (var atom in _beliefs.Network.AtomsOf<Atom.Occurs>())
                if (ReferenceEquals(atom.Step.Part, part) && atom.Step.Operation.Changes.Any(change => ReferenceEquals(change.Aspect, aspect) && change.To == aspect.Normal)
                    && _laws.IsRequired(atom)) Report($"leaves {new GroundState(part, aspect, StateSet.Of(state))} as it was on arrival");
        }
    }

    private int LastOf(Step step) => _steps.ToList().FindLastIndex(other => other.Step.Equals(step));

    private void Report(string text) => _violations.Add(new Violation(_at < _steps.Count ? _steps[_at].Id : null, text));
}
