using FsCheck.Xunit;
using ProcedureRules.Plans;
using ProcedureRules.Tests.Planning;
using ProcedureRules.Validating;
using Xunit;

namespace ProcedureRules.Tests.Validating;

public sealed class PlanValidatorTests
{
    [Fact]
    public void Validate_PlanAsPlanned_IsTaken()
    {
        var draft = Draft(Shops.Mounts().Plan());

        Assert.Empty(PlanValidator.Violations(draft));
        Assert.NotNull(PlanValidator.Validate(draft).Plan);
    }

    [Fact]
    public void Validate_AnyTwoStepsSwappedOfWhichOneComesAfterTheOther_IsRejected()
    {
        foreach (var plan in new[] { Shops.Starter().Plan(), Shops.Mounts().Plan() })
            for (var i = 0; i < plan.Steps.Count; i++)
                foreach (var after in plan.Steps[i].After)
                {
                    var steps = plan.Steps.ToList();
                    var at = steps.FindIndex(step => step.Id == after);
                    (steps[i], steps[at]) = (steps[at], steps[i]);
                    Assert.NotEmpty(PlanValidator.Violations(Draft(plan, steps)));
                }
    }

    [Fact]
    public void Validate_AnyStepDropped_IsRejected()
    {
        foreach (var plan in new[] { Shops.Starter().Plan(), Shops.Mounts().Plan() })
            for (var i = 0; i < plan.Steps.Count; i++)
                Assert.NotEmpty(PlanValidator.Violations(Draft(plan, [.. plan.Steps.Take(i), .. plan.Steps.Skip(i + 1)])));
    }

    [Fact]
    public void Validate_UndoingTooEarly_IsRejected()
    {
        var plan = Shops.Mounts().Plan();
        for (var i = 1; i < plan.Steps.Count; i++)
        {
            if (plan.Steps[i].Step.Operation.Undoes is null) continue;
            for (var at = 0; at < i; at++)
            {
                var steps = plan.Steps.ToList();
                steps.RemoveAt(i);
                steps.Insert(at, plan.Steps[i]);
                var isFree = !plan.Steps.Skip(at).Take(i - at).Any(between => plan.Steps[i].After.Contains(between.Id));
                Assert.True(isFree || PlanValidator.Violations(Draft(plan, steps)).Count > 0, $"{plan.Steps[i].Id} at {at}");
            }
        }
    }

    [Fact]
    public void Validate_WhileBroken_IsRejectedInItsWords()
    {
        var plan = Shops.Mounts().Plan();
        var steps = plan.Steps.ToList();
        var release = steps.Single(step => step.Id == "release_jack(engine)");
        steps.Remove(release);
        steps.Insert(steps.FindIndex(step => step.Id == "fasten_mount(left_mount)"), release);

        Assert.Contains(PlanValidator.Violations(Draft(plan, steps)), violation => violation.Text.Contains("engine.hold is jack|blocks", StringComparison.Ordinal));
    }

    [Fact]
    public void Validate_CautionTakenAway_IsRejected()
    {
        var shop = Shops.Starter();
        var plan = shop.About("remove_starter", Shop.Caution("heavy")).Head("stay safe").Plan();
        var bare = plan.Steps.Select(step => new PlanStep { Id = step.Id, Number = step.Number, Step = step.Step, Text = step.Text, Time = step.Time, Changes = step.Changes, After = step.After }).ToList();

        Assert.Contains(PlanValidator.Violations(Draft(plan, bare)), violation => violation.Step == "remove_starter(starter)");
        Assert.NotEmpty(PlanValidator.Violations(Draft(plan) with { Cautions = [] }));
    }

    [Fact]
    public void Validate_WaitTakenAway_IsRejected()
    {
        var plan = Shops.Starter().Wait("remove_starter", "fit_starter", 30).Plan();
        var bare = plan.Steps.Select(step => new PlanStep { Id = step.Id, Number = step.Number, Step = step.Step, Text = step.Text, Time = step.Time, Changes = step.Changes, After = step.After }).ToList();

        Assert.Contains(PlanValidator.Violations(Draft(plan, bare)), violation => violation.Text.Contains("wait", StringComparison.Ordinal));
    }

    [Fact]
    public void Validate_ChangesThatAreNotTheOperations_IsRejected()
    {
        var plan = Shops.Starter().Plan();
        var steps = plan.Steps.Select(step => new PlanStep { Id = step.Id, Number = step.Number, Step = step.Step, Text = step.Text, Time = step.Time, Changes = [], After = step.After }).ToList();

        Assert.NotEmpty(PlanValidator.Violations(Draft(plan, steps)));
    }

    [Property(MaxTest = 150)]
    public void Validate_RandomPlanWithAStepDropped_IsRejectedOrTheStepWasFree(byte[] bytes, byte which)
    {
        if (RandomShop.From(bytes).Try().Plan is not { Steps.Count: > 0 } plan) return;
        var dropped = plan.Steps[which % plan.Steps.Count];
        var without = Draft(plan, [.. plan.Steps.Where(step => step != dropped)]);

        Assert.NotEmpty(PlanValidator.Violations(without));
    }

    private static PlanDraft Draft(Plan plan, IReadOnlyList<PlanStep>? steps = null) => new()
    {
        Situation = plan.Situation,
        Beliefs = plan.Beliefs,
        Steps = [.. (steps ?? plan.Steps).Select((step, i) => new PlanStep
        {
            Id = step.Id,
            Number = i + 1,
            Step = step.Step,
            Text = step.Text,
            Time = step.Time,
            Changes = step.Changes,
            After = [],
            Cautions = step.Cautions,
            Checks = step.Checks,
            Waits = step.Waits,
            Because = step.Because,
            Detail = step.Detail,
            Provisional = step.Provisional,
            Holds = step.Holds,
        })],
        Questions = plan.Questions,
        Cautions = plan.Cautions,
        Stops = plan.Stops,
        Holds = plan.Holds,
        Choices = plan.Choices,
        Labour = plan.Labour,
    };
}
