using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using Xunit;

namespace ProcedureRules.Tests.Facts;

/// <summary>Mistakes in single statements.</summary>
public sealed class StatementMistakesTests
{
    [Fact]
    public void Apply_NoEqualsSign_ShowsTheForms()
    {
        var complaints = Complaints("oil_pan.drop_available 2 in");
        Assert.Equal(
            """
            statement:1:1: error PR0512: 'oil_pan.drop_available 2 in' is not a statement
            1 | oil_pan.drop_available 2 in
              | ^^^^^^^^^^^^^^^^^^^^^^^^^^^
              = note: for example 'oil_pan.drop_available=2 in', 'vehicle.height=raised', 'covers(dust_cover, oil_pan)=no' or 'part oil_cooler=yes'
            """,
            complaints);
    }

    [Fact]
    public void Apply_NoPath_ShowsTheForms()
    {
        var complaints = Complaints("drop=2 in");
        Assert.Equal(
            """
            statement:1:1: error PR0512: 'drop=2 in' is not a statement
            1 | drop=2 in
              | ^^^^^^^^^
              = note: for example 'oil_pan.drop_available=2 in', 'vehicle.height=raised', 'covers(dust_cover, oil_pan)=no' or 'part oil_cooler=yes'
            """,
            complaints);
    }

    [Fact]
    public void Apply_NoValue_ShowsTheForms()
    {
        var complaints = Complaints("oil_pan.drop_available=");
        Assert.Equal(
            """
            statement:1:1: error PR0512: 'oil_pan.drop_available=' is not a statement
            1 | oil_pan.drop_available=
              | ^^^^^^^^^^^^^^^^^^^^^^^
              = note: for example 'oil_pan.drop_available=2 in', 'vehicle.height=raised', 'covers(dust_cover, oil_pan)=no' or 'part oil_cooler=yes'
            """,
            complaints);
    }

    [Fact]
    public void Apply_MisspeltPart_NamesTheNearest()
    {
        var complaints = Complaints("oil_pna.drop_available=2 in");
        Assert.Equal(
            """
            statement:1:1: error PR0501: the sheet has no part 'oil_pna'; did you mean 'oil_pan'?
            1 | oil_pna.drop_available=2 in
              | ^^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Apply_UnitMissing_PointsAtTheValue()
    {
        var complaints = Complaints("oil_pan.drop_available= 2");
        Assert.Equal(
            """
            statement:1:25: error PR0504: a length is due, and '2' has no unit (thou, in, ft, mm, m, km)
            1 | oil_pan.drop_available= 2
              |                         ^
            """,
            complaints);
    }

    [Fact]
    public void Apply_UnknownState_NamesTheNearest()
    {
        var complaints = Complaints("vehicle.height=rased");
        Assert.Equal(
            """
            statement:1:16: error PR0504: 'rased' is not a state of 'vehicle.height'; did you mean 'raised'?
            1 | vehicle.height=rased
              |                ^^^^^
              = note: its states are 'ground' or 'raised'
            """,
            complaints);
    }

    [Fact]
    public void Apply_RelationAnswerThatIsNone_NamesTheNearest()
    {
        var complaints = Complaints("covers(cover, oil_pan)=yess");
        Assert.Equal(
            """
            statement:1:24: error PR0512: 'yess' is not an answer: 'yes', 'no' or 'unknown'; did you mean 'yes'?
            1 | covers(cover, oil_pan)=yess
              |                        ^^^^
            """,
            complaints);
    }

    [Fact]
    public void Apply_MisspeltRelation_NamesTheNearest()
    {
        var complaints = Complaints("cover(cover, oil_pan)=yes");
        Assert.Equal(
            """
            statement:1:1: error PR0506: there is no relation 'cover'; did you mean 'covers'?
            1 | cover(cover, oil_pan)=yes
              | ^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Apply_MisspeltKindOfPart_NamesTheNearest()
    {
        var complaints = Complaints("part steering_lnk=yes");
        Assert.Equal(
            """
            statement:1:6: error PR0509: 'steering_lnk' is neither a part that is known so far nor a kind; did you mean 'steering_link'?
            1 | part steering_lnk=yes
              |      ^^^^^^^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Apply_Vehicle_IsRefused()
    {
        var complaints = Complaints("part vehicle=no");
        Assert.Equal(
            """
            statement:1:6: error PR0509: every sheet has exactly one vehicle, named 'vehicle', without being told
            1 | part vehicle=no
              |      ^^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Apply_DerivedFact_IsRefused()
    {
        var complaints = Complaints("oil_pan.drop_needed=2 in");
        Assert.Equal(
            """
            statement:1:9: error PR0508: 'oil_pan.drop_needed' is derived by rules and cannot be stated
            1 | oil_pan.drop_needed=2 in
              |         ^^^^^^^^^^^
              = declared here: a.yaml:25:3
            """,
            complaints);
    }

    private static string Complaints(string statement)
    {
        var bag = new DiagnosticBag();
        Assert.Null(StatementReader.Apply(statement, GivenSheets.Read(GivenSheets.Van).Situation!, Source.Stated, bag));
        return bag.ToSnippets().TrimEnd('\n');
    }
}
