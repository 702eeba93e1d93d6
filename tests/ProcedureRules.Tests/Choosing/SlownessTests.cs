using ProcedureRules.Facts;
using ProcedureRules.Packs;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;
using ProcedureRules.Tests.Planning;
using ProcedureRules.Validating;
using Xunit;

namespace ProcedureRules.Tests.Choosing;

public class SlownessTests
{
    // Taking the starter out is 30 to 45 minutes of the invented shop.
    private const string Step = "remove_starter(starter)";

    [Fact]
    public void Plan_StepThatRustSlows_TakesLongerAndSaysWhy()
    {
        var shop = Shops.Starter();
        var plain = shop.Plan().Labour;
        shop.About("remove_starter", Shop.Slower(1.5, 2));

        var plan = shop.Plan();

        Assert.Equal(Minutes(45, 90), plan.Step(Step).Time);
        Assert.Contains(plan.Step(Step).Because, reason => reason.Rule.StartsWith("remove_starter: Slower", StringComparison.Ordinal));
        Assert.Equal((plain.Low + (15 * 60), plain.High + (45 * 60)), (plan.Labour.Low, plan.Labour.High));
    }

    [Theory]
    [InlineData(IfUnknown.Do, 90)]
    [InlineData(IfUnknown.Hold, 45)]
    public void Plan_RustNotKnown_CountsForTheUpperEndAloneUnlessItAsksToBeHeld(IfUnknown ifUnknown, int most)
    {
        var shop = Shops.Starter();
        var rusty = shop.YesNo("starter", "rusty");
        shop.About("remove_starter", Shop.Slower(1.5, 2, ifUnknown), Shop.Yes(rusty));

        Assert.Equal(Minutes(30, most), shop.Plan().Step(Step).Time);
        Assert.Equal(Minutes(30, 45), shop.Says(rusty, Value.Of(false)).Plan().Step(Step).Time);
    }

    [Fact]
    public void Plan_SeveralThatSlow_MultiplyAndNoneSpeedsUp()
    {
        var shop = Shops.Starter();
        shop.About("remove_starter", Shop.Slower(1.5, 2)).About("remove_starter", Shop.Slower(0.5, 1.5));

        Assert.Equal(Minutes(45, 135), shop.Plan().Step(Step).Time);
    }

    [Fact]
    public void Validate_TimeWithoutItsFactor_IsRejected()
    {
        var shop = Shops.Starter();
        shop.About("remove_starter", Shop.Slower(1.5, 2));
        var plan = shop.Plan();
        var draft = new PlanDraft
        {
            Situation = plan.Situation,
            Beliefs = plan.Beliefs,
            Steps = [.. plan.Steps.Select(step => new PlanStep { Id = step.Id, Number = step.Number, Step = step.Step, Text = step.Text, Time = step.Step.Operation.Time, Changes = step.Changes, After = step.After })],
        };

        Assert.Contains(PlanValidator.Violations(draft), violation => violation.ToString().Contains("does not take the time it takes here", StringComparison.Ordinal));
    }

    private static Quantity Minutes(double low, double high) => Quantity.Between(low * 60, high * 60, Dimension.Duration);
}
