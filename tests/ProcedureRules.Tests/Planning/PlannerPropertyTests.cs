using FsCheck.Xunit;
using ProcedureRules.Language;
using ProcedureRules.Planning;
using Xunit;

namespace ProcedureRules.Tests.Planning;

public sealed class PlannerPropertyTests
{
    private const int Worlds = 300;

    [Property(MaxTest = Worlds)]
    public void Plan_RandomWorld_PassesTheSimpleReplay(byte[] bytes)
    {
        var result = RandomShop.From(bytes).Try();
        if (result.Plan is { } plan) Assert.Empty(SimpleReplay.Faults(plan));
        else Assert.NotEmpty(result.Diagnostics);
    }

    [Property(MaxTest = Worlds)]
    public void Plan_RandomWorld_IsNeverRejectedByItsOwnCheck(byte[] bytes) =>
        Assert.DoesNotContain(RandomShop.From(bytes).Try().Diagnostics, diagnostic => diagnostic.Code == "PR0704");

    [Property(MaxTest = 100)]
    public void Plan_RulesShuffled_IsTheSame(byte[] bytes, int seed)
    {
        var shop = RandomShop.From(bytes);

        var plan = Describe(shop.Try());

        Assert.Equal(plan, Describe(shop.Try()));
        Assert.Equal(plan, Describe(shop.Try(rules => [.. rules.OrderBy(rule => HashCode.Combine(seed, rule.Name))])));
    }

    [Property(MaxTest = Worlds)]
    public void Plan_RandomWorld_EveryRemovalHasItsReturn(byte[] bytes)
    {
        var plan = RandomShop.From(bytes).Try().Plan;
        if (plan is null) return;
        foreach (var off in plan.Steps.Where(step => step.Step.Operation.UndoneBy is not null).GroupBy(step => step.Step))
        {
            var aspect = off.Key.Operation.Changes[0].Aspect;
            var last = plan.Steps.SelectMany(step => step.Changes).Last(change => change.After.Part == off.Key.Part && change.After.Aspect == aspect).After;
            if (last.States.Has(aspect.Normal))
                Assert.Equal(off.Count(), plan.Steps.Count(step => step.Step.Equals(new Step(off.Key.Operation.UndoneBy!, off.Key.Part))));
        }
    }

    [Fact]
    public void Plan_RandomWorlds_AreMostlyPlanned()
    {
        // The properties above would hold of a planner that never plans.
        var random = new Random(7);
        var planned = 0;
        for (var i = 0; i < 100; i++)
        {
            var bytes = new byte[random.Next(10, 80)];
            random.NextBytes(bytes);
            if (RandomShop.From(bytes).Try().Plan is { Steps.Count: > 0 }) planned++;
        }
        Assert.InRange(planned, 40, 100);
    }

    [Property(MaxTest = 100)]
    public void Plan_SmallBounds_EndsWithinThem(byte[] bytes)
    {
        var beliefs = RandomShop.From(bytes).Believe();
        var options = new PlannerOptions { MostHypotheses = 3, MostDecisions = 1, MostMoments = 5, MostRepeats = 1 };

        var result = Planner.Plan(beliefs, options, TestContext.Current.CancellationToken);

        if (result.Plan is { } plan) Assert.Empty(SimpleReplay.Faults(plan));
        else Assert.NotEmpty(result.Diagnostics);
    }

    [Fact]
    public void Plan_BoundOfMoments_IsSaidAndTheStepsLeftAreNamed()
    {
        var options = new PlannerOptions { MostMoments = 3 };

        var diagnostic = Assert.Single(Planner.Plan(Shops.Mounts().Believe(), options, TestContext.Current.CancellationToken).Diagnostics);

        Assert.Equal("PR0703", diagnostic.Code);
        Assert.Contains("remove_pan(pan)", diagnostic.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_Cancelled_Throws() =>
        Assert.Throws<OperationCanceledException>(() => Planner.Plan(Shops.Mounts().Believe(), new CancellationToken(true)));

    private static string Describe(PlanResult result) => result.Plan is not { } plan
        ? string.Join('\n', result.Diagnostics.Select(diagnostic => diagnostic.ToSnippet()))
        : string.Join('\n', plan.Steps.Select(step =>
                $"{step.Id} after [{string.Join(", ", step.After)}] because [{string.Join(", ", step.Because.Select(reason => reason.Text))}]"
                + $" mind [{string.Join(", ", step.Cautions.Select(caution => caution.Text))}] only if [{string.Join(", ", step.Provisional)}] holds {step.Holds.Count}"))
            + $"\nquestions {string.Join(", ", plan.Questions.Select(question => question.Id))}"
            + $"\nstops {string.Join(", ", plan.Stops.Select(stop => stop.Text))}"
            + $"\nchoices {string.Join(", ", plan.Choices.Select(choice => $"{choice.Text}: {choice.Taken}"))}";
}
