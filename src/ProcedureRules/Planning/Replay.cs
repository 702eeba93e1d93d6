using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;

namespace ProcedureRules.Planning;

/// <summary>
/// Walks through a plan step by step and checks what must hold, reading everything again from the records. It shares no code with the
/// simulation that found the order, so that a mistake there shows here.
/// </summary>
internal sealed class Replay
{
    private readonly BeliefState _beliefs;
    private readonly BeliefState _planned;
    private readonly Situation _situation;
    private readonly IReadOnlyList<PlanStep> _steps;
    private readonly HashSet<Step> _inPlan;
    private readonly Dictionary<(Part, Aspect), int> _now = [];
    private readonly Dictionary<Step, List<int[]>> _found = [];
    private readonly List<Violation> _violations = [];
    private int _at;

    private Replay(BeliefState beliefs, BeliefState planned, IReadOnlyList<PlanStep> steps)
    {
        (_beliefs, _planned, _steps) = (beliefs, planned, steps);
        _situation = beliefs.Network.Result.Situation;
        _inPlan = [.. steps.Select(step => step.Step)];
    }

    /// <summary>What is wrong with the steps under some beliefs; the plan was made under <paramref name="planned"/>.</summary>
    /// <remarks>What the plan holds for is judged when it is known, by another plan: it counts only as far as it did then.</remarks>
    public static IReadOnlyList<Violation> Of(BeliefState beliefs, BeliefState planned, IReadOnlyList<PlanStep> steps)
    {
        var replay = new Replay(beliefs, planned, steps);
        replay.Walk();
        return replay._violations;
    }

    private void Walk()
    {
        var ways = Waypoints();
        var passed = new int[ways.Count];
        Pass(ways, passed);
        for (_at = 0; _at < _steps.Count; _at++)
        {
            CheckOrder();
            CheckForbidden();
            CheckStart();
            CheckNeeds("starts");
            var broken = Broken().ToHashSet();
            CheckChanges(Change());
            CheckNeeds("ends");
            foreach (var text in Broken())
                if (!broken.Contains(text)) Report($"breaks: {text}");
            Pass(ways, passed);
        }
        for (var i = 0; i < ways.Count; i++)
            if (passed[i] < ways[i].Count) Report($"never passes {ways[i][passed[i]]}");
        CheckEnd();
    }

    private Step Now => _steps[_at].Step;

    private int StateOf(Part part, Aspect aspect) => _now.TryGetValue((part, aspect), out var state) ? state : _situation.StateNow(part, aspect);

    private bool Is(GroundState state) => state.States.Has(StateOf(state.Part, state.Aspect));

    private void CheckStart()
    {
        foreach (var change in Now.Operation.Changes)
            if (!change.From.Has(StateOf(Now.Part, change.Aspect)))
                Report($"starts from {new GroundState(Now.Part, change.Aspect, change.From)}, which does not hold");
    }

    private void CheckNeeds(string when)
    {
        foreach (var source in _beliefs.Network.RecordsWith<Conclusion.Need>())
        {
            var need = (Conclusion.Need)source.Effect.Conclusion!;
            if (need.Step < 0 || !source.Record.Binding.Step(need.Step).Equals(Now) || !Counts(source, Now)) continue;
            if (!source.Record.Premises.OfType<Atom.Occurs>().All(premise => _inPlan.Contains(premise.Step))) continue;
            var state = new GroundState(source.Record.Binding.Part(need.State.Slot), need.State.Aspect, need.State.States);

            // At its end a step has changed what it changes, and moments are judged at its start.
            if (when == "ends" && (source.Record.Moments.Count > 0 || Now.Operation.Changes.Any(change => ReferenceEquals(change.Aspect, state.Aspect) && ReferenceEquals(Now.Part, state.Part)))) continue;
            if (source.Record.Moments.All(Is) && !Is(state)) Report($"{when} without {state}");
        }
    }

    private bool Counts(RecordEffect source, Step step) =>
        _beliefs.Given(source.Record, source.Index, step) >= Assurance.Provisional && _planned.Given(source.Record, source.Index, step) >= Assurance.Provisional;

    private void CheckOrder()
    {
        foreach (var (first, second, source) in Orders())
        {
            if (!second.Equals(Now) || !_inPlan.Contains(first) || first.Equals(second) || !source.Record.Moments.All(Is)) continue;
            var comesLater = _steps.Skip(_at).Any(step => step.Step.Equals(first));
            var before = _steps.Take(_at).Count(step => step.Step.Equals(first));
            var owed = first.Operation.Undoes is { } undone ? _steps.Take(_at).Count(step => step.Step.Equals(new Step(undone, first.Part))) : 0;
            if (before == 0 || (comesLater && owed > before)) Report($"comes before {first.Name}, which has to be done first");
        }
    }

    private IEnumerable<(Step First, Step Second, RecordEffect Source)> Orders()
    {
        foreach (var source in _beliefs.Network.RecordsWith<Conclusion.Order>())
            if (_beliefs.Available(source.Record, source.Index) > Assurance.No && source.Effect.Conclusion is Conclusion.Order order)
                yield return (source.Record.Binding.Step(order.First), source.Record.Binding.Step(order.Second), source);
        foreach (var source in _beliefs.Network.RecordsWith<Conclusion.Do>())
        {
            if (_beliefs.Available(source.Record, source.Index) == Assurance.No) continue;
            var added = (Conclusion.Do)source.Effect.Conclusion!;
            var step = new Step(added.Operation, source.Record.Binding.Part(added.Slot));
            if (added.Before >= 0) yield return (step, source.Record.Binding.Step(added.Before), source);
            if (added.After >= 0) yield return (source.Record.Binding.Step(added.After), step, source);
        }
    }

    private void CheckForbidden()
    {
        foreach (var source in _beliefs.Network.RecordsWith<Conclusion.ForbidStep>())
            if (source.Record.Binding.Step(((Conclusion.ForbidStep)source.Effect.Conclusion!).Step).Equals(Now)
                && _beliefs.Given(source.Record, source.Index, Now) > Assurance.No && source.Record.Moments.All(Is)) Report("is forbidden");
        foreach (var source in _beliefs.Network.RecordsWith<Conclusion.ForbidWork>())
            if (source.Effect.Conclusion is Conclusion.ForbidWork work && Now.Equals(new Step(work.Operation, source.Record.Binding.Part(work.Slot)))
                && _beliefs.Available(source.Record, source.Index) > Assurance.No && source.Record.Moments.All(Is)) Report("is forbidden");
    }

    // What the plan says of a step's changes has to be what the step does.
    private void CheckChanges(IReadOnlyList<(GroundState Before, GroundState After)> done)
    {
        var said = _steps[_at].Changes;
        if (said.Count != done.Count || !done.All(said.Contains)) Report("changes something else than the plan says");
    }

    private List<(GroundState Before, GroundState After)> Change()
    {
        var done = new List<(GroundState Before, GroundState After)>();
        var found = Now.Operation.Changes.Select(change => StateOf(Now.Part, change.Aspect)).ToArray();
        if (!_found.TryGetValue(Now, out var stack)) _found[Now] = stack = [];
        stack.Add(found);
        var undone = Now.Operation.Undoes is { } operation ? new Step(operation, Now.Part) : null;
        var past = undone is not null && _found.TryGetValue(undone, out var open) && open.Count > 0 ? open : null;
        foreach (var change in Now.Operation.Changes)
        {
            var to = change.To;
            if (to < 0)
            {
                var index = undone is null ? -1 : undone.Operation.Changes.ToList().FindIndex(theirs => ReferenceEquals(theirs.Aspect, change.Aspect));
                if (past is null || index < 0) continue;
                to = past[^1][index];
            }
            var before = StateOf(Now.Part, change.Aspect);
            if (before != to) done.Add((new GroundState(Now.Part, change.Aspect, StateSet.Of(before)), new GroundState(Now.Part, change.Aspect, StateSet.Of(to))));
            _now[(Now.Part, change.Aspect)] = to;
        }
        past?.RemoveAt(past.Count - 1);
        return done;
    }

    // Whiles and forbidden states that do not hold now, in words.
    private IEnumerable<string> Broken()
    {
        foreach (var law in _beliefs.Network.Result.Rules.Whiles)
            foreach (var part in _situation.Parts)
            {
                if (_planned.Exists(part) == Truth.No || _beliefs.Exists(part) == Truth.No || !part.Kind.IsA(law.Aspect.Kind) || StateOf(part, law.Aspect) != law.State) continue;
                if (!ReferenceEquals(_beliefs.Network.Result.Rules.Vocabulary.AspectOf(part.Kind, law.Aspect.Name), law.Aspect)) continue;
                foreach (var other in law.Other is null ? [part] : _situation.Parts.Where(other => other.Kind.IsA(law.Other) && _beliefs.Exists(other) != Truth.No))
                    if (!law.States.Has(StateOf(other, law.OtherAspect))) yield return $"{law.Text} ({part.Name}, {other.Name})";
            }
        foreach (var source in _beliefs.Network.RecordsWith<Conclusion.ForbidState>())
        {
            var state = ((Conclusion.ForbidState)source.Effect.Conclusion!).State;
            var ground = new GroundState(source.Record.Binding.Part(state.Slot), state.Aspect, state.States);
            if (_beliefs.Available(source.Record, source.Index) > Assurance.No && source.Record.Moments.All(Is) && Is(ground)) yield return $"forbidden: {ground}";
        }
    }

    private List<List<GroundState>> Waypoints() =>
        [.. _beliefs.Network.RecordsWith<Conclusion.Waypoints>()
            .Where(source => _beliefs.Required(source.Record, source.Index) >= Assurance.Provisional && _planned.Required(source.Record, source.Index) >= Assurance.Provisional)
            .Select(source => ((Conclusion.Waypoints)source.Effect.Conclusion!).States
                .Select(state => new GroundState(source.Record.Binding.Part(state.Slot), state.Aspect, state.States)).ToList())];

    private void Pass(List<List<GroundState>> ways, int[] passed)
    {
        for (var i = 0; i < ways.Count; i++)
            while (passed[i] < ways[i].Count && Is(ways[i][passed[i]])) passed[i]++;
    }

    private void CheckEnd()
    {
        var ends = new Dictionary<(Part, Aspect), ulong>();
        foreach (var source in _beliefs.Network.RecordsWith<Conclusion.Need>())
        {
            var need = (Conclusion.Need)source.Effect.Conclusion!;
            if (need.Step >= 0 || _beliefs.Required(source.Record, source.Index) < Assurance.Provisional || _planned.Required(source.Record, source.Index) < Assurance.Provisional) continue;
            var key = (source.Record.Binding.Part(need.State.Slot), need.State.Aspect);
            ends[key] = ends.GetValueOrDefault(key, ulong.MaxValue) & need.State.States.Bits;
        }
        foreach (var ((part, aspect), states) in ends)
            if (!new StateSet(states).Has(StateOf(part, aspect))) Report($"ends without {new GroundState(part, aspect, new StateSet(states))}");
        foreach (var ((part, aspect), state) in _now)
            if (!aspect.IsMark && !ends.ContainsKey((part, aspect)) && state != aspect.Normal) Report($"ends with {new GroundState(part, aspect, StateSet.Of(state))}");
        foreach (var atom in _beliefs.Network.AtomsOf<Atom.Occurs>())
            foreach (var change in atom.Step.Operation.Changes)
            {
                var now = StateOf(atom.Step.Part, change.Aspect);
                if (_now.ContainsKey((atom.Step.Part, change.Aspect)) || change.Aspect.IsMark || now == change.Aspect.Normal || change.To != change.Aspect.Normal) continue;
                if (!ends.ContainsKey((atom.Step.Part, change.Aspect)) && _beliefs.Required(atom) >= Assurance.Provisional && _planned.Required(atom) >= Assurance.Provisional)
                    Report($"leaves {new GroundState(atom.Step.Part, change.Aspect, StateSet.Of(now))} as it was on arrival");
            }
        foreach (var step in _inPlan)
            if (step.Operation is { Changes.Count: 0, UndoneBy: { } undoing } && _inPlan.Contains(new Step(undoing, step.Part))
                && LastOf(step) > LastOf(new Step(undoing, step.Part))) Report($"{step.Name} is never undone");
    }

    private int LastOf(Step step) => _steps.ToList().FindLastIndex(other => other.Step.Equals(step));

    private void Report(string text) => _violations.Add(new Violation(_at < _steps.Count ? _steps[_at].Id : null, text));
}
