using ProcedureRules.Plans;

namespace ProcedureRules.Scheduling;

/// <summary>Lists what has to be there, by when it is first needed.</summary>
internal static class PreparationList
{
    /// <summary>The list for steps that start at some moments.</summary>
    public static IReadOnlyList<Preparation> Of(Plan plan, Workshop shop, long[] starts, Clock clock)
    {
        var indices = plan.Steps.Select((step, index) => (step.Id, index)).ToDictionary(entry => entry.Id, entry => entry.index);
        var all = new List<Preparation>();
        foreach (var supply in plan.Supplies) all.Add(Item(PreparationKind.Supply, supply));
        foreach (var tool in plan.Tools) all.Add(Item(PreparationKind.Tool, tool));
        foreach (var step in plan.Steps)
        {
            if (step.Step.Operation.Hands <= shop.Technicians) continue;
            var people = step.Step.Operation.Hands - shop.Technicians;
            var text = new Wording(units => $"{(people == 1 ? "a helper" : $"{people} helpers")} for step {step.Number}: {step.Text.In(units)}");
            all.Add(new Preparation(PreparationKind.Helper, text, clock.At(starts[indices[step.Id]]), step.Id, step.Provisional.Count == 0));
        }
        return [.. all.OrderBy(preparation => preparation.By.Date).ThenBy(preparation => preparation.Kind).ThenBy(preparation => preparation.By)];

        Preparation Item(PreparationKind kind, PlanItem item)
        {
            var steps = item.Steps.Where(indices.ContainsKey).Select(id => indices[id]).ToList();
            var first = steps.Count == 0 ? -1 : steps.MinBy(index => starts[index]);
            return new Preparation(kind, item.Text, first < 0 ? clock.Start : clock.At(starts[first]), first < 0 ? null : plan.Steps[first].Id, item.IsSure);
        }
    }
}
