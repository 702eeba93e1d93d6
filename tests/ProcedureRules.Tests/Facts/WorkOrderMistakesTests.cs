using Xunit;

namespace ProcedureRules.Tests.Facts;

/// <summary>Mistakes in work orders.</summary>
public sealed class WorkOrderMistakesTests
{
    [Fact]
    public void Read_MisspeltJob_NamesTheNearest()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            parts: {starter: starter}
            """,
            order: """
            work_order: x
            jobs: [replace_startr]
            """);
        Assert.Equal(
            """
            order.yaml:2:8: error PR0511: there is no job 'replace_startr'; did you mean 'replace_starter'?
            2 | jobs: [replace_startr]
              |        ^^^^^^^^^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_JobOnOneOfSeveralParts_ListsThem()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            parts: {left: engine_mount, right: engine_mount}
            """,
            order: """
            work_order: x
            jobs: [replace_mount]
            """);
        Assert.Equal(
            """
            order.yaml:2:8: error PR0511: the job 'replace_mount' can be on several parts of the kind 'engine_mount': say on which, 'left' or 'right'
            2 | jobs: [replace_mount]
              |        ^^^^^^^^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_JobWithoutItsPart_IsTold()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            """,
            order: """
            work_order: x
            jobs: [replace_mount]
            """);
        Assert.Equal(
            """
            order.yaml:2:8: error PR0511: the job 'replace_mount' is on a part of the kind 'engine_mount', and the sheet has none
            2 | jobs: [replace_mount]
              |        ^^^^^^^^^^^^^
              = note: add one under 'parts', such as 'engine_mount: engine_mount', and under 'relations' what lies over it or turns it
            """,
            complaints);
    }

    [Fact]
    public void Read_JobOnPartOfAnotherKind_IsTold()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            parts: {starter: starter, pan: oil_pan}
            """,
            order: """
            work_order: x
            jobs: [{job: replace_starter, on: pan}]
            """);
        Assert.Equal(
            """
            order.yaml:2:35: error PR0511: the job 'replace_starter' is on a part of the kind 'starter', and 'pan' is of the kind 'oil_pan'
            2 | jobs: [{job: replace_starter, on: pan}]
              |                                   ^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_JobTwice_NamesBothPlaces()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            parts: {starter: starter}
            """,
            order: """
            work_order: x
            jobs: [replace_starter, {job: replace_starter, on: starter}]
            """);
        Assert.Equal(
            """
            order.yaml:2:31: error PR0507: 'replace_starter on starter' stands twice in this file
            2 | jobs: [replace_starter, {job: replace_starter, on: starter}]
              |                               ^^^^^^^^^^^^^^^
              = first here: order.yaml:2:8
            """,
            complaints);
    }

    [Fact]
    public void Read_WorkOrderWithoutJobs_IsTold()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            """,
            order: """
            work_order: x
            jobs: []
            """);
        Assert.Equal(
            """
            order.yaml:2:7: error PR0106: at least 1 item expected in this list, there are 0
            2 | jobs: []
              |       ^^
            """,
            complaints);
    }
}
