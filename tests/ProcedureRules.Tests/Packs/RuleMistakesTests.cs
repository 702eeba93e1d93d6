using Xunit;

namespace ProcedureRules.Tests.Packs;

/// <summary>Mistakes in the structure of rules, tables and relations.</summary>
public sealed class RuleMistakesTests
{
    [Fact]
    public void Read_ListEntryCutByAComma_SaysToQuoteIt()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            rules:
              - rule: cut
                when: [ s leaves starter.place fitted, covers(dust_cover, starter) ]
                then: [ {stop: x} ]
                because: x
                basis: x
            """));
        Assert.Equal(
            """
            b.yaml:7:44: error PR0216: a comma has cut this text in two: 'covers(dust_cover' ends inside a parenthesis
            7 |     when: [ s leaves starter.place fitted, covers(dust_cover, starter) ]
              |                                            ^^^^^^^^^^^^^^^^^^^^^^^^^^^
              = note: put the whole text in quotes
            """,
            complaints);
    }

    [Fact]
    public void Read_ValueCutByAComma_SaysToQuoteIt()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            rules:
              - rule: cut
                then: [ {relate: covers(dust_cover, starter)} ]
                because: x
                basis: x
            """));
        Assert.Equal(
            """
            b.yaml:7:41: error PR0101: unknown key 'starter)' in the conclusion 'relate'
            7 |     then: [ {relate: covers(dust_cover, starter)} ]
              |                                         ^^^^^^^^
              = note: a comma ends a text inside '{ }': put a text that holds one in quotes
            """,
            complaints);
    }

    [Fact]
    public void Read_TwoConclusionsInOneEntry_SaysToSplitThem()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            rules:
              - rule: two
                then: [ {need: starter.place is off, danger: It is heavy.} ]
                because: x
                basis: x
            """));
        Assert.Equal(
            """
            b.yaml:7:42: error PR0101: unknown key 'danger' in the conclusion 'need'
            7 |     then: [ {need: starter.place is off, danger: It is heavy.} ]
              |                                          ^^^^^^
              = note: a list entry is one conclusion: write this one as an entry of its own
            """,
            complaints);
    }

    [Fact]
    public void Read_MisspeltConclusion_NamesTheNearest()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            rules:
              - rule: two
                then: [ {ned: starter.place is off} ]
                because: x
                basis: x
            """));
        Assert.Equal(
            """
            b.yaml:7:14: error PR0101: unknown key 'ned'; did you mean 'end'?
            7 |     then: [ {ned: starter.place is off} ]
              |              ^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_KeyThatDoesNotGoWithItsConclusion_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            rules:
              - rule: two
                then: [ {need: starter.place is off, strength: strong} ]
                because: x
                basis: x
            """));
        Assert.Equal(
            """
            b.yaml:7:42: error PR0101: unknown key 'strength' in the conclusion 'need'
            7 |     then: [ {need: starter.place is off, strength: strong} ]
              |                                          ^^^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_RuleWithoutReasonAndBasis_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            rules:
              - rule: two
                then: [ {stop: x} ]
            """));
        Assert.Equal(
            """
            b.yaml:6:5: error PR0102: the key 'basis' is missing in a rule
            6 |   - rule: two
              |     ^^^^
            b.yaml:6:5: error PR0102: the key 'because' is missing in a rule
            6 |   - rule: two
              |     ^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_RelationOfThree_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            relations:
              between: {of: [part, part, part], text: "{a}"}
            """));
        Assert.Equal(
            """
            b.yaml:6:17: error PR0217: a relation is between two kinds, these are 3
            6 |   between: {of: [part, part, part], text: "{a}"}
              |                 ^^^^^^^^^^^^^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_TableRowTooShort_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            tables:
              - table: soak
                inputs: [starter.solenoid, oil_pan.dented]
                output: oil_pan.drop_needed
                rows:
                  - [on_starter, 1 in]
                  - [on_starter, yes, 2 in]
                because: x
                basis: x
            """));
        Assert.Equal(
            """
            b.yaml:10:9: error PR0218: 3 cells expected in this row: one for each input, then the value; there are 2
            10 |       - [on_starter, 1 in]
               |         ^^^^^^^^^^^^^^^^^^
            """,
            complaints);
    }
}
