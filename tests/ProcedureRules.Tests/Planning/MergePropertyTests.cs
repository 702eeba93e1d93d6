using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using ProcedureRules.Beliefs;
using ProcedureRules.Planning;
using ProcedureRules.Plans;
using ProcedureRules.Testing.Generating;
using ProcedureRules.Tests.Engine;
using Xunit;

namespace ProcedureRules.Tests.Planning;

/// <summary>Several jobs on one vehicle are never dearer together than one after the other.</summary>
public sealed class MergePropertyTests
{
    private const double Rounding = 1;

    [Property(MaxTest = 300)]
    public void Plan_OfTwoJobsInAGeneratedWorld_TakesNoMoreLabourThanEachByItself(byte[] bytes)
    {
        var shop = RandomShop.From(bytes, isTwoJobs: true);
        if (Try(shop, "job") is not { } one || Try(shop, "other") is not { } other || Try(shop, "job", "other") is not { } both) return;
        Compare(one, other, both);
    }

    [Fact]
    public void Plan_OfTwoJobsInGeneratedWorlds_IsMostlyComparedAndOftenShares()
    {
        var random = new Random(5);
        var (compared, shared) = (0, 0);
        for (var i = 0; i < 100; i++)
        {
            var bytes = new byte[random.Next(20, 80)];
            random.NextBytes(bytes);
            var shop = RandomShop.From(bytes, isTwoJobs: true);
            if (Try(shop, "job") is not { Steps.Count: > 0 } one || Try(shop, "other") is not { Steps.Count: > 0 } other || Try(shop, "job", "other") is not { } both) continue;
            compared++;
            if (both.Labour.High < one.Labour.High + other.Labour.High - Rounding) shared++;
        }

        Assert.True(compared >= 25 && shared >= 10, $"{compared} compared, {shared} share");
    }

    private static void Compare(Plan one, Plan other, Plan both)
    {
        var (low, high) = (one.Labour.Low + other.Labour.Low, one.Labour.High + other.Labour.High);
        Assert.True(both.Labour.Low + both.Labour.High <= low + high + Rounding, $"{both.Labour} together; {one.Labour} and {other.Labour}\n{Steps(both)}\n{Steps(one)}\n{Steps(other)}");
    }

    private static string Steps(Plan plan) => string.Join(' ', plan.Steps.Select(step => step.Id + (step.Provisional.Count > 0 ? "?" : "")));

    // What holds is no plan to the end, and what stops is none.
    private static Plan? Try(Shop shop, params string[] jobs) =>
        Planner.Plan(shop.Believe(jobs: jobs), TestContext.Current.CancellationToken).Plan is { Stops.Count: 0, Holds.Count: 0 } plan ? plan : null;
}
