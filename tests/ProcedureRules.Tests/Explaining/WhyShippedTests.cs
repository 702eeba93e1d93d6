using ProcedureRules.Explaining;
using ProcedureRules.Quantities;
using ProcedureRules.Tests.Engine;
using Xunit;

namespace ProcedureRules.Tests.Explaining;

/// <summary>Everything that the plan of every shipped job says can be asked why, and the answer goes down to facts and to what packs declare.</summary>
public class WhyShippedTests
{
    private const int DeepestThatJsonReadersTake = 30;

    private static readonly WhyNodeSort[] Ends = [WhyNodeSort.Fact, WhyNodeSort.Job, WhyNodeSort.State, WhyNodeSort.Declaration, WhyNodeSort.Repeated];

    public static TheoryData<string> Orders => [.. Shipped.Orders];

    [Theory]
    [MemberData(nameof(Orders))]
    public void Of_EveryEntry_EndsInFactsAndDeclarations(string order)
    {
        var plan = Shipped.Plan(order);
        var faults = new List<string>();
        foreach (var entry in PlanContents.Of(plan))
        {
            var tree = Why.Of(plan, entry).Tree;
            var nodes = Below(tree).ToList();
            if (nodes.Count == 0) faults.Add($"{entry.Sort} {entry.Id}: nothing");
            faults.AddRange(nodes.Where(node => node.Because.Count == 0 && !Ends.Contains(node.Sort)).Select(node => $"{entry.Sort} {entry.Id}: ends in {node.Sort} {node.Text}"));
            faults.AddRange(nodes.Where(node => node.Rule is null && node.Text.In(UnitSystem.Us).Length == 0).Select(node => $"{entry.Sort} {entry.Id}: says nothing, {node.Sort}"));
            var told = nodes.Where(node => node.Sort != WhyNodeSort.Repeated).Select(node => $"{node.Text} (as above)").Append($"{entry.Text} (as above)").ToHashSet();
            faults.AddRange(nodes.Where(node => node.Sort == WhyNodeSort.Repeated && !told.Contains(node.Text.ToString())).Select(node => $"{entry.Sort} {entry.Id}: {node.Text}"));
            if (Depth(tree) > DeepestThatJsonReadersTake) faults.Add($"{entry.Sort} {entry.Id}: {Depth(tree)} deep");
        }

        Assert.True(faults.Count == 0, $"{faults.Count}\n{string.Join('\n', faults.Take(40))}");
    }

    [Theory]
    [MemberData(nameof(Orders))]
    public void Of_EveryEntryById_AnswersWithIt(string order)
    {
        var plan = Shipped.Plan(order);
        foreach (var entry in PlanContents.Of(plan))
            Assert.True(Why.Of(plan, entry.Id).Any(answer => answer.Item.Sort == entry.Sort), $"{entry.Sort} {entry.Id}");
    }

    // A reason that rests on work which the plan has not was a fault: whoever looks for that step finds none.
    [Theory]
    [MemberData(nameof(Orders))]
    public void Of_EveryStep_NamesOnlyStepsOfThePlan(string order)
    {
        var plan = Shipped.Plan(order);
        var steps = plan.Steps.Select(step => step.Step.Name).ToHashSet();
        foreach (var step in plan.Steps)
        {
            var named = Below(Why.Of(plan, step.Id)[0].Tree).Where(node => node.Sort == WhyNodeSort.Step).Select(node => node.Id!);
            Assert.Equal([], named.Where(id => !steps.Contains(id)).Select(id => $"{step.Id} for {id}"));
        }
    }

    private static IEnumerable<WhyNode> Below(WhyNode node) => node.Because.SelectMany(because => Below(because).Prepend(because));

    private static int Depth(WhyNode node) => 1 + node.Because.Select(Depth).DefaultIfEmpty().Max();
}
