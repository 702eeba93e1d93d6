using ProcedureRules.Diagnostics;
using ProcedureRules.Scheduling;
using ProcedureRules.Tests.Docs;
using Xunit;

namespace ProcedureRules.Tests.Scheduling;

/// <summary>Mistakes in shop files.</summary>
public class ShopMistakesTests
{
    [Fact]
    public void Read_HoursThatEndBeforeTheyBegin_AreTold() => AssertComplaint(
        """
        shop: x
        hours: {monday: 17:00-8:00, tuesday: 8:00-17:00}
        """,
        """
        shop.yaml:2:17: error PR0580: the hours of monday are out of order: a period ends after it begins, and the next begins after that
        2 | hours: {monday: 17:00-8:00, tuesday: 8:00-17:00}
          |                 ^^^^^^^^^^
        """);

    [Fact]
    public void Read_ShopThatNeverOpens_IsTold() => AssertComplaint(
        """
        shop: x
        hours: {}
        """,
        """
        shop.yaml:2:8: error PR0580: the shop is never open
        2 | hours: {}
          |        ^^
        """);

    [Fact]
    public void Read_DayThatIsNotInTheCalendar_IsTold() => AssertComplaint(
        """
        shop: x
        closed: [2026-02-30]
        """,
        """
        shop.yaml:2:10: error PR0581: there is no day '2026-02-30'
        2 | closed: [2026-02-30]
          |          ^^^^^^^^^^
        """);

    [Fact]
    public void Read_MisspeltPlaceAndEnergy_NameTheNearest() => AssertComplaint(
        """
        shop: x
        places: {benhc: 1}
        alone: [laod]
        """,
        """
        shop.yaml:2:10: error PR0582: no pack names the place 'benhc'; did you mean 'bench'?
        2 | places: {benhc: 1}
          |          ^^^^^
        shop.yaml:3:9: error PR0582: no pack names the energy 'laod'; did you mean 'load'?
        3 | alone: [laod]
          |         ^^^^
        """);

    [Fact]
    public void Read_WorkOrderInPlaceOfAShop_GetsOneComplaint()
    {
        var bag = new DiagnosticBag();
        Assert.Null(new WorkshopReader(ReferencePage.Instance.Packs.Vocabulary, bag).Read(new SourceFile("shop.yaml", "work_order: x\njobs: []\n")));
        Assert.Single(bag.Ordered());
    }

    [Fact]
    public void Read_FileThatIsNotThere_IsTold()
    {
        var read = ShopFile.Read("no-such-shop.yaml", ReferencePage.Instance.Packs.Vocabulary);
        Assert.Null(read.Shop);
        Assert.Single(read.Diagnostics);
    }

    private static void AssertComplaint(string yaml, string expected)
    {
        var bag = new DiagnosticBag();
        new WorkshopReader(ReferencePage.Instance.Packs.Vocabulary, bag).Read(new SourceFile("shop.yaml", yaml));
        Assert.Equal(expected.ReplaceLineEndings("\n"), bag.ToSnippets().Trim());
    }
}
