using ProcedureRules.Language;
using ProcedureRules.Plans;
using ProcedureRules.Validating;

namespace ProcedureRules.Scheduling;

/// <summary>
/// What of a plan's order really binds: each step with those before it that it cannot change places with. Steps that neither looks at what the
/// other changes commute, so every order that keeps these pairs brings the same states to the same steps, and the plan's check passes it as it
/// passed the plan.
/// </summary>
internal static class BindingOrder
{
    /// <summary>For each step the indices of those it comes after, ascending; what follows from others is mostly left out.</summary>
    public static IReadOnlyList<IReadOnlyList<int>> Of(Plan plan)
    {
        var before = plan.Steps.Select(_ => new SortedSet<int>()).ToArray();
        AddConflicts(FootprintReader.Of(plan), before);
        var indices = plan.Steps.Select((step, index) => (step.Id, index)).ToDictionary(entry => entry.Id, entry => entry.index);
        for (var i = 0; i < plan.Steps.Count; i++)
            foreach (var id in plan.Steps[i].After) before[i].Add(indices[id]);
        var places = plan.Steps.Select((step, index) => (step.Step, index)).GroupBy(entry => entry.Step)
            .ToDictionary(group => group.Key, group => group.Select(entry => entry.index).ToList());
        AddOrders(plan, places, before);
        AddWaits(plan, indices, places, before);
        AddChecks(plan, indices, before);
        return [.. before.Select(set => set.ToList())];
    }

    private static void AddConflicts(IReadOnlyList<Footprint> footprints, SortedSet<int>[] before)
    {
        var writers = new Dictionary<int, int>();
        var readers = new Dictionary<int, List<int>>();
        for (var i = 0; i < footprints.Count; i++)
        {
            foreach (var key in footprints[i].Reads)
                if (writers.TryGetValue(key, out var writer)) before[i].Add(writer);
            foreach (var key in footprints[i].Writes)
            {
                if (writers.TryGetValue(key, out var writer)) before[i].Add(writer);
                if (readers.Remove(key, out var since)) before[i].UnionWith(since);
            }
            before[i].Remove(i);
            foreach (var key in footprints[i].Writes) writers[key] = i;
            foreach (var key in footprints[i].Reads)
            {
                if (footprints[i].Writes.Contains(key)) continue;
                if (!readers.TryGetValue(key, out var list)) readers[key] = list = [];
                list.Add(i);
            }
        }
    }

    // An order between two steps counts how often each was done and undone.
    private static void AddOrders(Plan plan, Dictionary<Step, List<int>> places, SortedSet<int>[] before)
    {
        var laws = new PlanLaws(plan.Beliefs, [.. places.Keys]);
        foreach (var second in places.Keys)
            foreach (var (first, _) in laws.OrdersOf(second))
            {
                Add(places, first, second, before);
                if (first.Operation.Undoes is { } undone) Add(places, new Step(undone, first.Part), second, before);
            }
    }

    // A wait counts from the last time its step was done.
    private static void AddWaits(Plan plan, Dictionary<string, int> indices, Dictionary<Step, List<int>> places, SortedSet<int>[] before)
    {
        foreach (var step in plan.Steps)
            foreach (var wait in step.Waits)
                if (wait.AfterStep is { } id) Add(places, plan.Steps[indices[id]].Step, step.Step, before);
    }

    // What stands behind a check, or holds for a figure, comes after the steps that find something out.
    private static void AddChecks(Plan plan, Dictionary<string, int> indices, SortedSet<int>[] before)
    {
        var checks = plan.Questions.Where(question => question.AtStep is not null).Select(question => indices[question.AtStep!]).Distinct().ToList();
        for (var i = 0; i < plan.Steps.Count; i++)
            if (plan.Steps[i].Provisional.Count > 0 || plan.Steps[i].Holds.Count > 0) before[i].UnionWith(checks.Where(check => check < i));
    }

    // Each time one is done stays on its side of each time the other is.
    private static void Add(Dictionary<Step, List<int>> places, Step one, Step other, SortedSet<int>[] before)
    {
        if (!places.TryGetValue(one, out var ones)) return;
        foreach (var i in ones)
            foreach (var j in places[other])
                if (i != j) before[Math.Max(i, j)].Add(Math.Min(i, j));
    }
}
