using FsCheck.Xunit;
using ProcedureRules.Asking;
using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Packs;
using ProcedureRules.Plans;
using ProcedureRules.Tests.Planning;
using ProcedureRules.Tests.Engine;
using ProcedureRules.Validating;
using Xunit;

namespace ProcedureRules.Tests.Validating;

/// <summary>The check leaves out the answers that change no law: what it is told to be the same must be the same when it is read anew.</summary>
public sealed class PlanLawsTests
{
    [Property(MaxTest = 300)]
    public void AreSame_RandomWorld_OnlyWhereEveryLawReadAnewIsTheSame(byte[] bytes)
    {
        if (RandomShop.From(bytes).Try().Plan is { } plan) CheckAnswers(plan);
    }

    [Fact]
    public void AreSame_RandomWorlds_IsOftenTrueAndOftenNot()
    {
        // The property above would hold of a shortcut that is never taken.
        var random = new Random(11);
        var (same, other) = (0, 0);
        for (var i = 0; i < 800; i++)
        {
            var bytes = new byte[random.Next(10, 80)];
            random.NextBytes(bytes);
            if (RandomShop.From(bytes).Try().Plan is not { } plan) continue;
            var (s, o) = CheckAnswers(plan);
            (same, other) = (same + s, other + o);
        }
        Assert.True(same > 100 && other > 100, $"{same} the same, {other} not");
    }

    [Theory]
    [MemberData(nameof(Orders))]
    public void AreSame_ShippedWorkOrder_OnlyWhereEveryLawReadAnewIsTheSame(string name) =>
        CheckAnswers(Shipped.Plan(name));

    public static TheoryData<string> Orders => new(Shipped.Orders);

    private static (int Same, int Other) CheckAnswers(Plan plan)
    {
        var (same, other) = (0, 0);
        HashSet<Step> steps = [.. plan.Steps.Select(step => step.Step)];
        var laws = new PlanLaws(plan.Beliefs, steps);
        foreach (var question in plan.Questions)
            foreach (var outcome in Outcomes.Of(plan.Beliefs, question.About))
            {
                var there = plan.Beliefs.With([outcome]);
                if (!PlanLaws.AreSame(plan.Beliefs, there, plan.Steps))
                {
                    other++;
                    continue;
                }
                same++;
                foreach (var step in steps)
                    Assert.True(there.Available(new Atom.Occurs(step)) >= Assurance.Provisional || plan.Beliefs.Available(new Atom.Occurs(step)) == Assurance.No, $"{step.Name} is not done if {question.Id}");
                Assert.Equal(Describe(laws, steps), Describe(laws.Under(there, steps), steps));
            }
        return (same, other);
    }

    private static IEnumerable<string> Describe(PlanLaws laws, IEnumerable<Step> steps)
    {
        var told = steps.SelectMany(step => laws.NeedsOf(step).Select(need => $"{step.Name} needs {Words.State(need.State)}")
            .Concat(laws.OrdersOf(step).Select(order => $"{step.Name} after {order.First.Name}"))
            .Concat(laws.ProhibitionsOf(step).Select(record => $"{step.Name} not by {RecordName.Of(record)}")));
        return told
            .Concat(laws.ForbiddenStates.Select(state => $"never {Words.State(state.State)}"))
            .Concat(laws.Whiles.Select(law => $"{Words.State(law.While)} keeps {Words.State(law.Kept)}"))
            .Concat(laws.Ends.Select(end => $"{end.Key.Part.Name} {end.Key.Aspect.Name} ends {end.Value}"))
            .Concat(laws.Waypoints.Select(points => string.Join(" then ", points.Select(Words.State))))
            .Order(StringComparer.Ordinal);
    }
}
