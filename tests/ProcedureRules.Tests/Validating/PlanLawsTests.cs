using FsCheck.Xunit;
using ProcedureRules.Asking;
using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Packs;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;
using ProcedureRules.Tests.Engine;
using ProcedureRules.Tests.Planning;
using ProcedureRules.Validating;
using Xunit;

namespace ProcedureRules.Tests.Validating;

/// <summary>The check leaves out the answers under which a plan stands as it was made: then all its steps are done and no law read anew may bind more.</summary>
public sealed class PlanLawsTests
{
    [Property(MaxTest = 300)]
    public void Stand_RandomWorld_OnlyWhereTheLawsReadAnewBindNoMore(byte[] bytes)
    {
        if (RandomShop.From(bytes).Try().Plan is { } plan) CheckAnswers(plan);
    }

    [Fact]
    public void Stand_RandomWorlds_IsOftenTrueAndOftenNot()
    {
        // The property above would hold of a shortcut that is never taken.
        var random = new Random(11);
        var (standing, falling) = (0, 0);
        for (var i = 0; i < 800; i++)
        {
            var bytes = new byte[random.Next(10, 80)];
            random.NextBytes(bytes);
            if (RandomShop.From(bytes).Try().Plan is not { } plan) continue;
            var (s, f) = CheckAnswers(plan);
            (standing, falling) = (standing + s, falling + f);
        }
        Assert.True(standing > 40 && falling > 40, $"{standing} stand, {falling} do not");
    }

    [Fact]
    public void Stand_AnswerTakesAwayWhatTheJobEndsWith_DoesNot()
    {
        // Every step is done under both answers; only if the cover may stay off is nothing missing.
        var shop = new Shop();
        shop.Part("cover", "cover");
        shop.Aspect("cover.place", "fitted", "off");
        var stays = shop.YesNo("cover", "stays_off");
        shop.Pair("remove_cover", "fit_cover", "cover", "place: fitted -> off").Do("remove_cover", "cover").End("cover", "place", "off", Shop.Yes(stays), IfUnknown.BehindCheck);
        var beliefs = shop.Believe();
        var remove = beliefs.Network.AtomsOf<Atom.Occurs>().Select(atom => atom.Step).Single(step => step.Operation.Name == "remove_cover");
        var step = new PlanStep { Id = remove.Name, Number = 1, Step = remove, Text = new Wording("remove it"), Time = remove.Operation.Time, Changes = [], After = [] };
        var laws = new PlanLaws(beliefs, [remove]);
        var stand = Outcomes.Of(beliefs, new Reading.OfFact(stays)).Select(answer => beliefs.With([answer]))
            .ToDictionary(there => there.Fact(stays.Part, stays.Fact).In(UnitSystem.Us), there => laws.Stand(there, [step]));

        Assert.Equal(new Dictionary<string, bool> { ["yes"] = true, ["no"] = false }, stand);
    }

    [Theory]
    [MemberData(nameof(Orders))]
    public void Stand_ShippedWorkOrder_OnlyWhereTheLawsReadAnewBindNoMore(string name) =>
        CheckAnswers(Shipped.Plan(name));

    public static TheoryData<string> Orders => new(Shipped.Orders);

    private static (int Standing, int Falling) CheckAnswers(Plan plan)
    {
        var (standing, falling) = (0, 0);
        if (plan.IsStopped) return (0, 0);
        HashSet<Step> steps = [.. plan.Steps.Select(step => step.Step)];
        var laws = new PlanLaws(plan.Beliefs, steps);
        foreach (var question in plan.Questions)
            foreach (var outcome in Outcomes.Of(plan.Beliefs, question.About))
            {
                var there = plan.Beliefs.With([outcome]);
                if (!laws.Stand(there, plan.Steps))
                {
                    falling++;
                    continue;
                }
                standing++;
                foreach (var step in steps)
                    Assert.True(there.Available(new Atom.Occurs(step)) >= Assurance.Provisional || plan.Beliefs.Available(new Atom.Occurs(step)) == Assurance.No, $"{step.Name} is not done if {question.Id}");
                var anew = laws.Under(there, steps);
                Assert.Empty(Describe(anew, steps).Except(Describe(laws, steps)));
                Assert.Empty(Replay.OfOutcome(there, anew, plan.Steps, isWhole: true));
            }
        return (standing, falling);
    }

    private static IEnumerable<string> Describe(PlanLaws laws, IEnumerable<Step> steps)
    {
        var told = steps.SelectMany(step => laws.NeedsOf(step).Select(need => $"{step.Name} needs {Words.State(need.State)}")
            .Concat(laws.OrdersOf(step).Select(order => $"{step.Name} after {order.First.Name}"))
            .Concat(laws.ProhibitionsOf(step).Select(record => $"{step.Name} not by {record.Name}")));
        return told
            .Concat(laws.ForbiddenStates.Select(state => $"never {Words.State(state.State)}"))
            .Concat(laws.Whiles.Select(law => $"{Words.State(law.While)} keeps {Words.State(law.Kept)}"))
            .Concat(laws.Ends.Select(end => $"{end.Key.Part.Name} {end.Key.Aspect.Name} ends {end.Value}"))
            .Concat(laws.Waypoints.Select(points => string.Join(" then ", points.Select(Words.State))))
            .Order(StringComparer.Ordinal);
    }
}
