using System.Globalization;
using ProcedureRules.Facts;
using ProcedureRules.Plans;
using ProcedureRules.Spelling;

namespace ProcedureRules.Explaining;

/// <summary>Why an item stands in a plan.</summary>
public static class Why
{
    private const string Before = " before ";

    /// <summary>The explanation of an entry of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="entry">The entry, as <see cref="PlanContents.Of"/> lists it.</param>
    public static WhyAnswer Of(Plan plan, PlanEntry entry)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(entry);
        return new WhyAnswer(entry, new WhyNode(WhyNodeSort.Item, entry.Text, [.. entry.Grounds(new ItemTrees(plan))]) { Id = entry.Id });
    }

    /// <summary>
    /// The explanation of an item: a step by number, id or operation; an order of two steps, <c>7 before 12</c>; a fact by path
    /// (<c>engine.rise</c>) or a question by id; anything else by a piece of its words.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="item">The item.</param>
    /// <returns>One answer for each thing that fits and rests on something else; empty where nothing does.</returns>
    public static IReadOnlyList<WhyAnswer> Of(Plan plan, string item)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(item);
        var answers = Entries(plan, item.Trim()).Select(entry => Of(plan, entry)).ToList();
        return [.. answers.DistinctBy(answer => (answer.Item.Sort, Ground(answer)))];
    }

    /// <summary>Whether a plan has an item, by the same words.</summary>
    internal static bool Has(Plan plan, string item) => Entries(plan, item.Trim()).Any();

    /// <summary>The name of a step or fact of the plan that is spelt nearest to an item that was not found; null where none is near.</summary>
    public static string? Nearest(Plan plan, string item)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var names = plan.Steps.Select(step => step.Id).Concat(plan.Questions.Select(question => question.Id))
            .Concat(plan.Situation.Observations.Select(observation => observation.Fact.ToString())).Distinct(StringComparer.Ordinal);
        return NearestName.Find(item, names);
    }

    // The same words at several steps, for the same reason, are one answer.
    private static string Ground(WhyAnswer answer) => answer.Item.Sort is PlanItemSort.Step or PlanItemSort.Order
        ? answer.Item.Id
        : $"{answer.Item.Text}|{string.Join('|', answer.Tree.Because.Select(because => $"{because.Rule} {because.Text}"))}";

    private static IEnumerable<PlanEntry> Entries(Plan plan, string item)
    {
        if (item.Length == 0) return [];
        if (Steps(plan, item) is { Count: > 0 } steps) return steps.DistinctBy(step => step.Step).Select(PlanContents.Step);
        if (Order(plan, item) is { } order) return [order];
        var beside = PlanContents.Beside(plan).ToList();
        if (beside.Where(entry => entry.Id == item).ToList() is { Count: > 0 } named) return named;
        return Fact(plan, item) is { } fact ? [fact] : beside.Where(entry => entry.Has(item));
    }

    private static List<PlanStep> Steps(Plan plan, string item)
    {
        var isNumber = int.TryParse(item, NumberStyles.None, CultureInfo.InvariantCulture, out var number);
        return [.. plan.Steps.Where(step => isNumber ? step.Number == number : step.Id == item || step.Step.Operation.Name == item)];
    }

    // Whichever way round it is asked, the order that the plan has.
    private static PlanEntry? Order(Plan plan, string item)
    {
        var at = item.IndexOf(Before, StringComparison.Ordinal);
        if (at < 0) return null;
        if (Steps(plan, item[..at].Trim()) is not [var one, ..] || Steps(plan, item[(at + Before.Length)..].Trim()) is not [var other, ..] || one == other) return null;
        return one.Number < other.Number ? PlanContents.Order(one, other) : PlanContents.Order(other, one);
    }

    private static PlanEntry? Fact(Plan plan, string item)
    {
        var dot = item.IndexOf('.', StringComparison.Ordinal);
        if (dot < 0) return null;
        foreach (var part in plan.Situation.Parts)
            if (part.Name == item[..dot] && plan.Situation.Vocabulary.FactOf(part.Kind, item[(dot + 1)..]) is { } fact) return PlanContents.Figure(new FactKey(part, fact));
        return null;
    }
}
