using System.Globalization;
using FsCheck.Xunit;
using ProcedureRules.Language;
using ProcedureRules.Planning;
using ProcedureRules.Plans;
using ProcedureRules.Tests.Validating;
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

    // Worlds in which a step that one answer makes needless was what kept another one's while, need or start.
    [Theory]
    [InlineData("107@35,108@40,97@49,127@51,6@54,97@56,187@63,245@71,234@72,129@79,6@80")]
    [InlineData("215@35,119@36,156@41,57@47,237@52,142@55")]
    [InlineData("103@2,173@40,147@44,136@45,181@48,102@49,145@51,89@52,186@53")]
    [InlineData("219@32,73@39,87@44,89@45,206@46,220@47")]
    public void Plan_ThatOneAnswerWouldBreak_HoldsBeforeAndIsPlannedAgain(string bytes)
    {
        var set = bytes.Split(',').Select(entry => entry.Split('@')).ToDictionary(entry => int.Parse(entry[1], CultureInfo.InvariantCulture), entry => byte.Parse(entry[0], CultureInfo.InvariantCulture));
        var shop = RandomShop.From([.. Enumerable.Range(0, set.Keys.Max() + 1).Select(i => set.GetValueOrDefault(i))]);

        var plan = shop.Try().Plan;

        Assert.NotNull(plan);
        Assert.Empty(SimpleReplay.Faults(plan));
        foreach (var hold in plan.Steps.SelectMany(step => step.Holds).Where(hold => hold.PlansAgain))
            Assert.Contains(plan.Questions, question => question.Id == Assert.Single(hold.Questions));
    }

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
