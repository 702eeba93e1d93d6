using ProcedureRules.Scheduling;
using Xunit;

namespace ProcedureRules.Tests.Scheduling;

/// <summary>
/// The nine activities of Hendrickson, Project Management for Construction, chapter 10 (fundamental scheduling procedures): durations in days,
/// predecessors; the project takes 30 days along A-C-F-I. Early and late dates by the critical path method.
/// </summary>
public class CriticalPathTests
{
    private const string Names = "ABCDEFGHI";

    private static readonly (int Days, string After, int Early, int Late, int Float)[] Activities =
    [
        (4, "", 0, 0, 0), (3, "", 0, 9, 9), (8, "A", 4, 4, 0), (7, "A", 4, 15, 11), (9, "BC", 12, 13, 1), (12, "BC", 12, 12, 0),
        (2, "DE", 21, 22, 1), (5, "DE", 21, 25, 4), (6, "FG", 24, 24, 0),
    ];

    private static WorkLoad Load => Loads.Of(
        [.. Activities.Select(activity => (long)activity.Days)], [.. Activities.Select(activity => activity.After.Select(name => new Lag(Names.IndexOf(name), 0)).ToArray())]);

    [Fact]
    public void Of_PublishedExample_GivesItsDatesAndFloats()
    {
        var path = CriticalPath.Of(Load);

        Assert.Equal(30, path.Length);
        Assert.Equal(Activities.Select(activity => (long)activity.Early), path.Earliest);
        Assert.Equal(Activities.Select(activity => (long)activity.Late), path.Latest);
        Assert.Equal(Activities.Select(activity => (long)activity.Float), Enumerable.Range(0, 9).Select(path.Float));
    }

    [Fact]
    public void Find_PublishedExample_NamesItsCriticalPath()
    {
        var placement = PlacementSearch.Best(Load, WorkCalendar.Always(), 1000, TestContext.Current.CancellationToken);

        var chain = new ChainFinder(Load, placement, WorkCalendar.Always()).Find();

        Assert.Equal(30, placement.Finish);
        Assert.Equal("ACFI", string.Concat(chain.Select(link => Names[link.Piece])));
        Assert.Equal([ChainCause.Begin, ChainCause.Order, ChainCause.Order, ChainCause.Order], chain.Select(link => link.Cause));
    }

    [Fact]
    public void Best_PublishedExampleWithOneHand_TakesTheSumOfAll() =>
        Assert.Equal(56, PlacementSearch.Best(Load.For(1), WorkCalendar.Always(), 1000, TestContext.Current.CancellationToken).Finish);
}
