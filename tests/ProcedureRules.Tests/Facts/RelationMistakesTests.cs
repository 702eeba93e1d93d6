using Xunit;

namespace ProcedureRules.Tests.Facts;

/// <summary>Mistakes in the relations of vehicle sheets.</summary>
public sealed class RelationMistakesTests
{
    [Fact]
    public void Read_RelationOfTheWrongForm_IsTold()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            relations:
              - starter covers oil_pan
            """);
        Assert.Equal(
            """
            van.yaml:3:5: error PR0506: 'starter covers oil_pan' is not a statement on a relation
            3 |   - starter covers oil_pan
              |     ^^^^^^^^^^^^^^^^^^^^^^
              = note: for example 'covers(dust_cover, oil_pan)', 'not covers(a, b)' or 'unknown covers(a, b)'
            """,
            complaints);
    }

    [Fact]
    public void Read_MisspeltRelation_NamesTheNearest()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            parts: {starter: starter, oil_pan: oil_pan}
            relations:
              - cover(starter, oil_pan)
            """);
        Assert.Equal(
            """
            van.yaml:4:5: error PR0506: there is no relation 'cover'; did you mean 'covers'?
            4 |   - cover(starter, oil_pan)
              |     ^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_RelationOfTheWrongKind_NamesTheDeclaration()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            parts: {starter: starter, oil_pan: oil_pan}
            relations:
              - traps(starter, oil_pan)
            """);
        Assert.Equal(
            """
            van.yaml:4:20: error PR0506: 'oil_pan' is of the kind 'oil_pan'; 'traps' takes one of the kind 'dust_cover' here
            4 |   - traps(starter, oil_pan)
              |                    ^^^^^^^
              = declared here: a.yaml:29:3
            """,
            complaints);
    }

    [Fact]
    public void Read_RelationWithItself_IsTold()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            parts: {starter: starter}
            relations:
              - covers(starter, starter)
            """);
        Assert.Equal(
            """
            van.yaml:4:5: error PR0506: 'covers' is between two parts, and both are 'starter'
            4 |   - covers(starter, starter)
              |     ^^^^^^^^^^^^^^^^^^^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_RelationStatedTwice_NamesBothPlaces()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            parts: {starter: starter, oil_pan: oil_pan}
            relations:
              - covers(starter, oil_pan)
              - not covers(starter, oil_pan)
            """);
        Assert.Equal(
            """
            van.yaml:5:5: error PR0507: 'covers(starter, oil_pan)' stands twice in this file
            5 |   - not covers(starter, oil_pan)
              |     ^^^^^^^^^^^^^^^^^^^^^^^^^^^^
              = first here: van.yaml:4:5
            """,
            complaints);
    }

    [Fact]
    public void Read_RelationCutByAComma_SaysToQuoteIt()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            parts: {starter: starter, oil_pan: oil_pan}
            relations: [ covers(starter, oil_pan) ]
            """);
        Assert.Equal(
            """
            van.yaml:3:14: error PR0216: a comma has cut this text in two: 'covers(starter' ends inside a parenthesis
            3 | relations: [ covers(starter, oil_pan) ]
              |              ^^^^^^^^^^^^^^^^^^^^^^^^
              = note: put the whole text in quotes
            """,
            complaints);
    }
}
