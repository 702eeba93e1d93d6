using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Plans;

namespace ProcedureRules.Validating;

/// <summary>Checks that nothing is lost between the records and the paper: steps, cautions, waits, figures, marks of what is only possible.</summary>
internal sealed class Completeness
{
    private readonly PlanDraft _draft;
    private readonly PlanLaws _laws;
    private readonly BeliefState _beliefs;
    private readonly List<Violation> _violations = [];

    private Completeness(PlanDraft draft, PlanLaws laws) => (_draft, _laws, _beliefs) = (draft, laws, draft.Beliefs);

    public static IReadOnlyList<Violation> Of(PlanDraft draft, PlanLaws laws)
    {
        var check = new Completeness(draft, laws);
        check.CheckIds();
        check.CheckDueSteps();
        check.CheckHead();
        check.CheckSteps();
        return check._violations;
    }

    private void CheckIds()
    {
        var seen = new HashSet<string>();
        for (var i = 0; i < _draft.Steps.Count; i++)
        {
            var step = _draft.Steps[i];
            if (step.Number != i + 1) Report(step, $"has the number {step.Number} at place {i + 1}");
            foreach (var after in step.After)
                if (!seen.Contains(after)) Report(step, $"stands before {after}, after which it comes");
            if (!seen.Add(step.Id)) Report(step, "has an id that another step has");
        }
    }

    private void CheckDueSteps()
    {
        var there = _draft.Steps.Select(step => step.Step).ToHashSet();
        foreach (var atom in _beliefs.Network.AtomsOf<Atom.Occurs>())
        {
            if (there.Contains(atom.Step) || _beliefs.Required(atom) < Assurance.Provisional) continue;
            var isWanted = _beliefs.Network.RecordsSupporting(atom).Any(support =>
                support.Record.Mechanism != Mechanism.Undo && _beliefs.Required(support.Record, support.Index) >= Assurance.Provisional);
            if (isWanted) _violations.Add(new Violation(null, $"{atom.Step.Name} is missing"));
        }
    }

    private void CheckHead()
    {
        foreach (var source in _beliefs.Network.RecordsWith<Conclusion.Caution>())
            if (source.Effect.Conclusion is Conclusion.Caution { Step: < 0 } caution && IsDue(caution, _beliefs.Available(source.Record, source.Index))
                && !Has(_draft.Cautions, caution, source)) _violations.Add(new Violation(null, $"the head lacks a {caution.Signal}"));
    }

    private void CheckSteps()
    {
        var states = new Dictionary<StateVariable, int>();
        var there = _draft.Steps.Select(step => step.Step).ToHashSet();
        for (var i = 0; i < _draft.Steps.Count; i++)
        {
            var step = _draft.Steps[i];
            foreach (var (source, level) in _beliefs.SaidOf(step.Step))
            {
                if (source.Record.Premises.Any(premise => premise is Atom.Occurs occurs && !there.Contains(occurs.Step))) continue;
                var holds = source.Record.Moments.All(moment => moment.States.Has(
                    states.TryGetValue(moment.Variable, out var state) ? state : _draft.Situation.StateNow(moment.Variable)));
                if (holds) Check(step, i, source, level);
            }
            foreach (var doubt in _laws.DoubtsOf(step.Step))
                if (!step.Holds.Any(hold => hold.PlansAgain && ReferenceEquals(hold.Reason.Record, doubt))) Report(step, $"does not hold for what may forbid it ({doubt.Name})");
            foreach (var (_, after) in step.Changes) states[after.Variable] = after.States.States().Single();
            var atom = new Atom.Occurs(step.Step);
            var isOnlyPossible = _beliefs.Required(atom) == Assurance.Provisional || (_beliefs.Required(atom) < Assurance.Provisional && _beliefs.Available(atom) == Assurance.Provisional);
            if (isOnlyPossible != step.Provisional.Count > 0) Report(step, "does not say truly whether it is sure");
        }
    }

    private void Check(PlanStep step, int place, RecordEffect source, Assurance level)
    {
        var binding = source.Record.Binding;
        switch (source.Effect.Conclusion)
        {
            case Conclusion.Caution { Step: >= 0 } caution when binding.Step(caution.Step).Equals(step.Step):
                if (IsDue(caution, level) && !Has(step.Cautions, caution, source)) Report(step, $"lacks a {caution.Signal}");
                break;
            case Conclusion.Figure figure when figure.Step >= 0 && binding.Step(figure.Step).Equals(step.Step):
                if (_beliefs.SourceOf(new FactKey(binding.Part(figure.Slot), figure.Fact)) < Source.Stated && step.Holds.Count == 0)
                    Report(step, $"does not hold for {binding.Part(figure.Slot).Name}.{figure.Fact.Name}");
                break;
            case Conclusion.Slower slower when binding.Step(slower.Step).Equals(step.Step) && level > Assurance.Held:
                if (slower.Factor.Evaluate(_beliefs, binding).Quantity.High is > 1 and < double.PositiveInfinity and var factor && step.Time.High < step.Step.Operation.Time.High * factor * 0.999)
                    Report(step, "does not take the time it takes here");
                break;
            case Conclusion.Wait { Since: null, From: >= 0 } wait when wait.Until >= 0 && binding.Step(wait.Until).Equals(step.Step):
                var from = _draft.Steps.Take(place).LastOrDefault(other => other.Step.Equals(binding.Step(wait.From)));
                if (from is not null && !step.Waits.Any(found => found.AfterStep == from.Id
                    && found.Least == wait.Least?.Evaluate(_beliefs, binding).Quantity && found.Most == wait.Most?.Evaluate(_beliefs, binding).Quantity))
                    Report(step, $"lacks the wait after {from.Id}");
                break;
            case Conclusion.Wait { Since: { } since, Least: { } least } wait when wait.Until >= 0 && binding.Step(wait.Until).Equals(step.Step):
                var due = least.Evaluate(_beliefs, binding).Quantity;
                if (_beliefs.Fact(binding.Part(since.Slot), since.Fact).Quantity.Low < due.High && !step.Waits.Any(found => found.AfterStep is null && found.Least == due))
                    Report(step, "lacks a wait since before the job");
                break;
        }
    }

    private static bool IsDue(Conclusion.Caution caution, Assurance level) => level > (caution.Signal == Signal.Notice ? Assurance.Held : Assurance.No);

    private bool Has(IReadOnlyList<PlanCaution> cautions, Conclusion.Caution caution, RecordEffect source)
    {
        var text = new Wording(caution.Text, _beliefs, source.Record.Binding);
        return cautions.Any(other => other.Signal == caution.Signal && text.IsSame(other.Text));
    }

    private void Report(PlanStep step, string text) => _violations.Add(new Violation(step.Id, text));
}
