using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Packs;
using ProcedureRules.Plans;

namespace ProcedureRules.Tests.Validating;

/// <summary>
/// What a technician would check with a pencil: the states step by step, each need when its step begins, each part back at the end, each
/// caution on the paper. Written for tests and kept apart from the library's validator.
/// </summary>
internal static class SimpleReplay
{
    public static IReadOnlyList<string> Faults(Plan plan)
    {
        var faults = new List<string>();
        var states = new Dictionary<StateVariable, int>();
        int State(Part part, Aspect aspect) => states.TryGetValue(new StateVariable(part, aspect), out var state) ? state : plan.Situation.StateNow(part, aspect);
        var records = plan.Beliefs.Network.Records;
        if (plan.Steps.Count > 0 && plan.Stops.Any(stop => stop.IsSure)) faults.Add("goes on though it surely stops");
        foreach (var step in plan.Steps)
        {
            foreach (var record in records)
                for (var i = 0; i < record.Effects.Count; i++)
                {
                    if (record.Effects[i].Conclusion is Conclusion.ForbidWork forbidden && step.Step.Equals(new Step(forbidden.Operation, record.Binding.Part(forbidden.Slot))))
                    {
                        var doubt = plan.Beliefs.Available(record, i);
                        if (doubt == Assurance.Sure) faults.Add($"{step.Id} is forbidden");
                        if (doubt > Assurance.No && (record.Effects[i].IfUnknown == IfUnknown.Do || !step.Holds.Any(hold => hold.PlansAgain))) faults.Add($"{step.Id} may be forbidden and does not hold");
                    }
                    var slot = record.Effects[i].Conclusion switch { Conclusion.Need need => need.Step, Conclusion.Caution caution => caution.Step, _ => -1 };
                    if (slot < 0 || !record.Binding.Step(slot).Equals(step.Step)) continue;
                    if (!record.Moments.All(moment => moment.States.Has(State(moment.Part, moment.Aspect)))) continue;
                    var level = plan.Beliefs.Given(record, i, step.Step);
                    if (record.Effects[i].Conclusion is Conclusion.Need wanted && level >= Assurance.Provisional
                        && !wanted.State.States.Has(State(record.Binding.Part(wanted.State.Slot), wanted.State.Aspect))) faults.Add($"{step.Id} lacks {record.Rule!.Name}");
                    if (record.Effects[i].Conclusion is Conclusion.Caution said && level > (said.Signal == Signal.Notice ? Assurance.Held : Assurance.No)
                        && !step.Cautions.Any(shown => shown.Text.ToString() == said.Text.Text)) faults.Add($"{step.Id} does not say {said.Text.Text}");
                }
            foreach (var change in step.Step.Operation.Changes)
                if (!change.From.Has(State(step.Step.Part, change.Aspect))) faults.Add($"{step.Id} cannot start");
            foreach (var (before, after) in step.Changes)
            {
                if (!before.States.Has(State(before.Part, before.Aspect))) faults.Add($"{step.Id} finds another state than it says");
                states[after.Variable] = after.States.States().Single();
            }
            foreach (var law in plan.Beliefs.Network.Result.Rules.Whiles)
                foreach (var part in plan.Situation.Parts.Where(part => part.Kind.IsA(law.Aspect.Kind) && State(part, law.Aspect) == law.State))
                    foreach (var other in law.Other is null ? [part] : plan.Situation.Parts.Where(other => other.Kind.IsA(law.Other)))
                        if (!law.States.Has(State(other, law.OtherAspect))) faults.Add($"after {step.Id}: {law.Text}");
        }
        foreach (var ((part, aspect), state) in states)
        {
            var ends = records.SelectMany(record => record.Effects.Select((effect, i) => (record, effect, i)))
                .Where(entry => entry.effect.Conclusion is Conclusion.Need { Step: < 0 } need && ReferenceEquals(need.State.Aspect, aspect)
                    && ReferenceEquals(entry.record.Binding.Part(need.State.Slot), part) && plan.Beliefs.Required(entry.record, entry.i) >= Assurance.Provisional)
                .Select(entry => ((Conclusion.Need)entry.effect.Conclusion!).State.States).ToList();
            if (ends.Count > 0 ? !ends.TrueForAll(end => end.Has(state)) : !aspect.IsMark && state != aspect.Normal) faults.Add($"{part} is left {aspect.States[state]}");
        }
        return faults;
    }
}
