using ProcedureRules.Language;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;

namespace ProcedureRules.Testing.Laws;

/// <summary>Judges whether a plan keeps to what a law says of some of its steps.</summary>
internal static class LawJudge
{
    /// <summary>What is wrong; null where nothing is.</summary>
    public static string? Wrong(PlanCourse course, Conclusion conclusion, LawBinding binding) => conclusion switch
    {
        Conclusion.Need need => State(course, need.Step < 0 ? course.End : binding.Places[need.Step], need.State, binding, isDue: true),
        Conclusion.ForbidState forbidden => Enumerable.Range(0, course.End + 1).Select(index => State(course, index, forbidden.State, binding, isDue: false)).FirstOrDefault(wrong => wrong is not null),
        Conclusion.Order order => binding.Places[order.First] < binding.Places[order.Second] ? null
            : $"{course.Plan.Steps[binding.Places[order.First]].Id} comes {course.Say(binding.Places[order.Second])} or later",
        Conclusion.ForbidStep forbidden => $"{course.Plan.Steps[binding.Places[forbidden.Step]].Id} is in the plan",
        Conclusion.ForbidWork forbidden => course.Plan.Steps.FirstOrDefault(step => step.Step.Operation == forbidden.Operation && step.Step.Part == binding.Part(forbidden.Slot)) is { } found ? $"{found.Id} is in the plan" : null,
        Conclusion.Wait wait => Waits(course, wait, binding),
        Conclusion.Caution caution => Cautions(course, caution, binding),
        _ => null,
    };

    private static string? State(PlanCourse course, int index, StateCondition condition, LawBinding binding, bool isDue)
    {
        var part = binding.Part(condition.Slot);
        var now = course.State(index, part, condition.Aspect);
        return condition.States.Has(now) == isDue ? null : $"{part.Name}.{condition.Aspect.Name} is {condition.Aspect.States[now]} {course.Say(index)}";
    }

    private static string? Waits(PlanCourse course, Conclusion.Wait wait, LawBinding binding)
    {
        var until = course.Plan.Steps[binding.Places[wait.Until]];
        var from = wait.Since is null ? course.Plan.Steps[binding.Places[wait.From]] : null;
        if (from is not null && from.Number > until.Number) return null;
        var due = wait.Least?.Evaluate(course.Plan.Beliefs, binding.Items).Quantity;
        // What has passed since an event before the job need not be waited for again.
        if (wait.Since is { } since && due is { } needed && course.Plan.Beliefs.Fact(binding.Items.Part(since.Slot), since.Fact).Quantity.Low >= needed.High) return null;
        return until.Waits.Any(found => found.AfterStep == from?.Id && (due is null || (found.Least is { } least && least.Low >= due.Value.Low))) ? null
            : $"nothing makes {until.Id} wait{(from is null ? "" : $" after {from.Id}")}";
    }

    private static string? Cautions(PlanCourse course, Conclusion.Caution caution, LawBinding binding)
    {
        var step = caution.Step < 0 ? null : course.Plan.Steps[binding.Places[caution.Step]];
        var words = caution.Text.Render(course.Plan.Beliefs, binding.Items, UnitSystem.Us);
        return (step?.Cautions ?? course.Plan.Cautions).Any(shown => shown.Signal >= caution.Signal && Says(shown, words)) ? null
            : $"'{words}' does not stand {(step is null ? "at the head" : $"at step {step.Number}, {step.Id}")}";
    }

    private static bool Says(PlanCaution shown, string words) => shown.Text.ToString().Contains(words, StringComparison.OrdinalIgnoreCase);
}
