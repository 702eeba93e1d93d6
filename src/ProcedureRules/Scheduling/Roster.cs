using ProcedureRules.Plans;

namespace ProcedureRules.Scheduling;

/// <summary>Says which technicians do which step: whoever is free, first of all who stands there already.</summary>
internal static class Roster
{
    /// <summary>The numbers, from 1, of those who do each step.</summary>
    public static IReadOnlyList<int>[] Of(Plan plan, WorkLoad load, Placement placement)
    {
        var (free, places) = (new long[load.Technicians], new string?[load.Technicians]);
        var who = new IReadOnlyList<int>[load.Count];
        foreach (var i in Enumerable.Range(0, load.Count).OrderBy(i => placement.Starts[i]).ThenBy(i => placement.Ends[i]).ThenBy(i => i))
        {
            var operation = plan.Steps[i].Step.Operation;
            var chosen = Enumerable.Range(0, load.Technicians)
                .Where(technician => free[technician] <= placement.Starts[i])
                .OrderByDescending(technician => places[technician] == operation.Place).ThenBy(technician => technician)
                .Take(operation.Hands).ToList();
            foreach (var technician in chosen) (free[technician], places[technician]) = (placement.Ends[i], operation.Place);
            who[i] = [.. chosen.Order().Select(technician => technician + 1)];
        }
        return who;
    }
}
