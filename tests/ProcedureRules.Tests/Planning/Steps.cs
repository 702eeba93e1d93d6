using ProcedureRules.Plans;
using Xunit;

namespace ProcedureRules.Tests.Planning;

/// <summary>Reads plans for tests.</summary>
internal static class Steps
{
    public static string[] Ids(this Plan plan) => [.. plan.Steps.Select(step => step.Id)];

    public static PlanStep Step(this Plan plan, string id) => plan.Steps.Single(step => step.Id == id);

    public static void Follows(this Plan plan, params string[] ids)
    {
        var places = ids.Select(id => Array.IndexOf(plan.Ids(), id)).ToList();
        Assert.True(places.All(place => place >= 0) && places.SequenceEqual(places.Order()), $"{string.Join(" < ", ids)} in\n{string.Join('\n', plan.Ids())}");
    }
}
