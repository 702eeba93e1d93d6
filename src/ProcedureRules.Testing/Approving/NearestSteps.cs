using ProcedureRules.Plans;

namespace ProcedureRules.Testing.Approving;

/// <summary>The steps that each step of a plan comes right after: what comes before one of them anyway goes without saying.</summary>
internal static class NearestSteps
{
    /// <summary>For each step, by its id, the ids of those that it comes right after.</summary>
    public static IReadOnlyDictionary<string, IReadOnlyList<string>> Of(Plan plan)
    {
        var (nearest, before) = (new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal), new Dictionary<string, HashSet<string>>(StringComparer.Ordinal));
        foreach (var step in plan.Steps)
        {
            var further = step.After.SelectMany(id => before[id]).ToHashSet(StringComparer.Ordinal);
            before[step.Id] = [.. further, .. step.After];
            nearest[step.Id] = [.. step.After.Where(id => !further.Contains(id))];
        }

        return nearest;
    }
}
