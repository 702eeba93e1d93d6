using System.Globalization;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Planning;
using ProcedureRules.Spelling;

namespace ProcedureRules.Explaining;

/// <summary>Why an item stands in a plan.</summary>
public static class Why
{
    /// <summary>
    /// The explanation of an item: a step by number or id, a fact by path (<c>engine.rise</c>), or a caution, check, tool, supply, hold, stop,
    /// offer or finding by a piece of its words.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="item">The item.</param>
    /// <returns>One tree for each thing that fits; empty where nothing does.</returns>
    public static IReadOnlyList<WhyNode> Of(Plan plan, string item)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(item);
        var wanted = item.Trim();
        if (Steps(plan, wanted) is { Count: > 0 } steps) return [.. steps.Select(step => new WhyTree(plan.Beliefs).Of(step))];
        if (Fact(plan, wanted) is { } key) return [new WhyTree(plan.Beliefs).Of(key)];
        return [.. Records(plan, wanted).Distinct().Select(record => new WhyTree(plan.Beliefs).Of(record))];
    }

    /// <summary>The name of a step or fact of the plan that is spelt nearest to an item that was not found; null where none is near.</summary>
    public static string? Nearest(Plan plan, string item)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var names = plan.Steps.Select(step => step.Id).Concat(plan.Questions.Select(question => question.Id))
            .Concat(plan.Situation.Observations.Select(observation => observation.Fact.ToString())).Distinct(StringComparer.Ordinal);
        return NearestName.Find(item, names);
    }

    private static List<Step> Steps(Plan plan, string item)
    {
        var isNumber = int.TryParse(item, NumberStyles.None, CultureInfo.InvariantCulture, out var number);
        return [.. plan.Steps.Where(step => isNumber ? step.Number == number : step.Id == item || step.Step.Operation.Name == item).Select(step => step.Step).Distinct()];
    }

    private static FactKey? Fact(Plan plan, string item)
    {
        var dot = item.IndexOf('.', StringComparison.Ordinal);
        if (dot < 0) return null;
        foreach (var part in plan.Situation.Parts)
            if (part.Name == item[..dot] && plan.Situation.Vocabulary.FactOf(part.Kind, item[(dot + 1)..]) is { } fact) return new FactKey(part, fact);
        return null;
    }

    private static IEnumerable<Record> Records(Plan plan, string words)
    {
        if (words.Length == 0) return [];
        var cautions = plan.Cautions.Concat(plan.Steps.SelectMany(step => step.Cautions)).Where(caution => Has(caution.Text)).Select(caution => caution.Reason);
        var checks = plan.Steps.SelectMany(step => step.Checks).Where(check => Has(check.Text)).Select(check => check.Reason);
        var waits = plan.Steps.SelectMany(step => step.Waits).Where(wait => Has(wait.Text)).Select(wait => wait.Reason);
        var holds = plan.Holds.Concat(plan.Steps.SelectMany(step => step.Holds)).Where(hold => Has(hold.Text)).Select(hold => hold.Reason);
        var stops = plan.Stops.Where(stop => Has(stop.Text)).Select(stop => stop.Reason);
        var items = plan.Tools.Concat(plan.Supplies).Concat(plan.Offers).Where(entry => Has(entry.Text)).Select(entry => entry.Reason).OfType<Reason>();
        var findings = plan.Findings.Where(finding => Has(finding.Text)).SelectMany(finding => finding.For.Concat(finding.Against));
        var choices = plan.Choices.Where(choice => Has(choice.Text) || choice.Ways.Any(way => Has(way.Text))).SelectMany(choice => choice.Because);
        return cautions.Concat(checks).Concat(waits).Concat(holds).Concat(stops).Concat(items).Concat(findings).Concat(choices).Select(reason => reason.Record);

        bool Has(Wording text) => text.ToString().Contains(words, StringComparison.OrdinalIgnoreCase);
    }
}
