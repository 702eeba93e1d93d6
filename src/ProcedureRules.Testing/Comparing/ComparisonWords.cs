using ProcedureRules.Diagnostics;
using ProcedureRules.Quantities;

namespace ProcedureRules.Testing.Comparing;

/// <summary>The sentences that the reports of a comparison share.</summary>
internal static class ComparisonWords
{
    private const int MostNames = 3;

    /// <summary>The sum.</summary>
    public static string Sum(PackComparison comparison) =>
        $"{comparison.Plans.Count} of {Messages.Count(comparison.Compared, "plan")} {(comparison.Plans.Count == 1 ? "changes" : "change")}.";

    /// <summary>What the version of a pack should be.</summary>
    public static string Of(VersionStep version) => version switch
    {
        { Before: null } => $"{version.Pack} {version.After}: new",
        { After: null } => $"{version.Pack} {version.Before}: gone",
        { Due: null, IsEnough: true } => $"{version.Pack} {Numbers(version)}: nothing has changed",
        { Due: null } => $"{version.Pack} {Numbers(version)}: nothing has changed, and the version is lower",
        { IsEnough: true } => $"{version.Pack} {Numbers(version)}: stepped enough for a {Word(version.Due.Value)} change",
        _ => $"{version.Pack} {Numbers(version)}: a {Word(version.Due.Value)} change takes {version.Least} at least",
    };

    /// <summary>What stands behind effects.</summary>
    public static string Of(ChangeCause cause) => cause.Changes switch
    {
        [] => "no change of the packs was found at work",
        [var one] => one.ToString(),
        var several => $"one of these, or some together: {string.Join("; ", several)}",
    };

    /// <summary>The effects of a cause, together where they show in the same plans.</summary>
    public static IEnumerable<IReadOnlyList<PlanEffect>> ByPlans(ChangeCause cause) =>
        cause.Effects.GroupBy(effect => string.Join('\n', effect.Plans)).Select(group => group.ToList());

    /// <summary>The names of plans: the first ones, and how many more.</summary>
    public static string Plans(IReadOnlyList<string> names) => names.Count <= MostNames
        ? string.Join("; ", names)
        : $"{string.Join("; ", names.Take(MostNames))}; and {names.Count - MostNames} more";

    /// <summary>What becomes of a plan, in numbers.</summary>
    public static string Of(ComparedPlan plan, UnitSystem units)
    {
        if (plan.Difference is not { } difference) return plan.Trouble ?? "";
        var (before, after) = (difference.Before, difference.After);
        string[] counts = [Count(difference.StepsIn.Count, "in"), Count(difference.StepsOut.Count, "out"), Count(difference.StepsMoved.Count, "moved"), Count(difference.StepsChanged.Count, "otherwise")];
        var steps = string.Join(", ", counts.Where(count => count.Length > 0));
        var labour = before.Labour == after.Labour ? "" : $"labour {before.Labour.ToDisplay(units)} becomes {after.Labour.ToDisplay(units)}";
        return string.Join("; ", new[] { steps.Length == 0 ? "the same steps" : $"steps: {steps}", labour }.Where(words => words.Length > 0));
    }

    /// <summary>A number of a version, by its name.</summary>
    public static string Word(VersionPart part) => part.ToString().ToLowerInvariant();

    private static string Numbers(VersionStep version) => version.Before == version.After ? version.After! : $"{version.Before} -> {version.After}";

    private static string Count(int count, string what) => count == 0 ? "" : $"{count} {what}";
}
