using System.Runtime.CompilerServices;
using ProcedureRules.Plans;

namespace ProcedureRules.Explaining;

/// <summary>
/// What a plan says, listed for comparing: its steps by name and the entries beside them. Made once for a plan, which is compared with every
/// answer and every supposed fact.
/// </summary>
internal sealed class PlanListing
{
    private static readonly ConditionalWeakTable<Plan, PlanListing> Listings = [];
    private readonly IReadOnlyList<PlanEntry> _entries;
    private readonly HashSet<(PlanItemSort Sort, string? Step, string Text)> _keys;

    private PlanListing(Plan plan)
    {
        Steps = plan.Steps.ToDictionary(step => step.Id);
        _entries = [.. PlanContents.Beside(plan).DistinctBy(entry => entry.Key)];
        _keys = [.. _entries.Select(entry => entry.Key)];
    }

    /// <summary>The listing of a plan.</summary>
    public static PlanListing Of(Plan plan) => Listings.GetValue(plan, static plan => new PlanListing(plan));

    /// <summary>The steps, by their names.</summary>
    public IReadOnlyDictionary<string, PlanStep> Steps { get; }

    /// <summary>What is said beside the steps and another plan does not say.</summary>
    public IReadOnlyList<PlanEntry> EntriesNotIn(PlanListing other) => [.. _entries.Where(entry => !other._keys.Contains(entry.Key))];
}
