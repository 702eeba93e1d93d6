using ProcedureRules.Facts;
using ProcedureRules.Packs;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;
using ProcedureRules.Testing.Laws;
using Xunit;

namespace ProcedureRules.Tests.Engine;

/// <summary>Two shipped jobs on a shipped vehicle are never dearer together than one after the other: for every work order a few of the jobs that fit its vehicle.</summary>
public sealed class ShippedMergeTests
{
    private const int OfEach = 3;
    private const double Rounding = 1;
    private const double HalfAMinute = 30;

    public static TheoryData<string> Orders => [.. Shipped.Orders];

    [Theory]
    [MemberData(nameof(Orders))]
    public void Plan_OfTwoShippedJobs_IsValidAndTakesNoMoreLabourThanEachByItself(string order)
    {
        if (JobPairs.Of(order) is not { } pairs) return;
        var others = pairs.Others;
        // Another place in the list for each order, so that all orders together meet most jobs.
        var start = 7 * Shipped.Orders.TakeWhile(name => name != order).Count();
        foreach (var i in Enumerable.Range(0, OfEach)) Compare(pairs, others[(start + (i * others.Count / OfEach)) % others.Count]);
    }

    // The one job raises the engine on guide bolts or with its mounts free, the other takes a mount out: the ways that lead to each by itself exclude each other.
    [Fact]
    public void Plan_AMountAndASealBehindTheFrame_HaveAnOrder()
    {
        var pairs = JobPairs.Of("front-crank-seal")!;
        foreach (var other in pairs.Others.Where(other => other.Job.Name == "replace_engine_mount")) Compare(pairs, other);
    }

    private static void Compare(JobPairs pairs, JobRequest other)
    {
        var alone = new[] { pairs.Alone(pairs.Own), pairs.Alone(other) };
        if (alone.Any(plan => plan.IsStopped)) return;
        var session = pairs.Open(pairs.Own, other);
        var both = Shipped.PlanOf(session);
        Assert.False(both.IsStopped, $"{other}: {string.Join("; ", both.Stops.Select(stop => stop.Text))}");
        Assert.Empty(PackLaws.Broken(Shipped.Engine, both));
        foreach (var plan in alone) Assert.Empty(ProvedTooEarly(plan, both));

        var apart = Sum(alone.Select(plan => plan.Labour));
        var most = apart + Sum(alone.Select(plan => JobPairs.LeftToFindOut(plan, both)));
        Assert.True(both.Labour.Low <= most.Low + Rounding && both.Labour.High <= most.High + Rounding, $"{other}: {both.Labour} together, {most} apart");

        if (session.Sharing(both, TestContext.Current.CancellationToken) is not { } sharing) return;
        Assert.Equal((both.Labour, apart), (sharing.Together, sharing.Apart));
        Assert.Equal(Math.Max(0, Middle(apart) - Middle(both.Labour)), sharing.Saving.Low, HalfAMinute + Rounding);
    }

    // What a job by itself proves behind its work is proved behind it with the other job, too: a proof before the work proves nothing.
    private static IEnumerable<string> ProvedTooEarly(Plan alone, Plan both)
    {
        var last = both.Steps.GroupBy(step => step.Step).ToDictionary(times => times.Key, times => times.Last().Number);
        return from proof in alone.Steps
               where proof.Phase == Phase.Prove
               from work in alone.Steps
               where work.Phase == Phase.Work && work.Number < proof.Number
               where last.TryGetValue(proof.Step, out var proved) && last.TryGetValue(work.Step, out var done) && proved < done
               select $"{proof.Id} before {work.Id}";
    }

    private static Quantity Sum(IEnumerable<Quantity> labours) => labours.Aggregate(Quantity.Point(0, Dimension.Duration), (sum, labour) => sum + labour);

    private static double Middle(Quantity labour) => (labour.Low + labour.High) / 2;
}
