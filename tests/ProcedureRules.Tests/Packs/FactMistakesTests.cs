using Xunit;

namespace ProcedureRules.Tests.Packs;

/// <summary>Mistakes in the facts of packs.</summary>
public sealed class FactMistakesTests
{
    [Fact]
    public void Read_UnknownType_NamesTheNearest()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            facts:
              starter.gap: {type: lenght, range: 0..1 in, ask: How wide?}
            """));
        Assert.Equal(
            """
            b.yaml:6:23: error PR0208: there is no type 'lenght'; did you mean 'length'?
            6 |   starter.gap: {type: lenght, range: 0..1 in, ask: How wide?}
              |                       ^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_RangeMissing_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            facts:
              starter.gap: {type: length, ask: How wide?}
            """));
        Assert.Equal(
            """
            b.yaml:6:3: error PR0208: 'starter.gap' is a quantity and needs a 'range': what can occur in the trade
            6 |   starter.gap: {type: length, ask: How wide?}
              |   ^^^^^^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_DerivedQuantityWithoutRange_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            facts:
              starter.gap: {type: length, derived: yes}
            rules:
              - rule: gap
                then: [ {set: {starter.gap: 1 in}} ]
                because: x
                basis: x
            """));
        Assert.Equal(
            """
            b.yaml:6:3: error PR0208: 'starter.gap' is a quantity and needs a 'range': what can occur in the trade
            6 |   starter.gap: {type: length, derived: yes}
              |   ^^^^^^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_RangeOfOtherDimension_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            facts:
              starter.gap: {type: length, range: 0..5 psi, ask: How wide?}
            """));
        Assert.Equal(
            """
            b.yaml:6:38: error PR0208: a length is due, not a gauge pressure
            6 |   starter.gap: {type: length, range: 0..5 psi, ask: How wide?}
              |                                      ^^^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_RangeWithoutUnit_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            facts:
              starter.gap: {type: length, range: 0..5, ask: How wide?}
            """));
        Assert.Equal(
            """
            b.yaml:6:38: error PR0208: a length is due, and '0..5' has no unit (thou, in, ft, mm, m, km)
            6 |   starter.gap: {type: length, range: 0..5, ask: How wide?}
              |                                      ^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_RangeWithOneEnd_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            facts:
              starter.gap: {type: length, range: 5 in, ask: How wide?}
            """));
        Assert.Equal(
            """
            b.yaml:6:38: error PR0208: a range has two ends, such as 0..12 in
            6 |   starter.gap: {type: length, range: 5 in, ask: How wide?}
              |                                      ^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_RangeOfWords_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            facts:
              starter.side: {type: [left, right], range: 0..5, ask: Which side?}
            """));
        Assert.Equal(
            """
            b.yaml:6:46: error PR0208: 'starter.side' is no quantity and takes no 'range'
            6 |   starter.side: {type: [left, right], range: 0..5, ask: Which side?}
              |                                              ^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_WordTwice_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            facts:
              starter.side: {type: [left, right, left], ask: Which side?}
            """));
        Assert.Equal(
            """
            b.yaml:6:38: error PR0208: the word 'left' stands twice
            6 |   starter.side: {type: [left, right, left], ask: Which side?}
              |                                      ^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_FactWithoutQuestion_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            facts:
              starter.side: {type: [left, right]}
            """));
        Assert.Equal(
            """
            b.yaml:6:3: error PR0209: 'starter.side' cannot be asked for: 'ask' is missing
            6 |   starter.side: {type: [left, right]}
              |   ^^^^^^^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_FactsThatNoRuleGives_AreWarnings()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            facts:
              starter.hot: {type: yes_no, derived: yes}
              starter.rise: {type: length, demand: yes}
            """));
        Assert.Equal(
            """
            b.yaml:6:3: warning PR0210: no rule sets 'starter.hot', and nobody is asked for it
            6 |   starter.hot: {type: yes_no, derived: yes}
              |   ^^^^^^^^^^^
            b.yaml:7:3: warning PR0210: no rule demands anything of 'starter.rise'
            7 |   starter.rise: {type: length, demand: yes}
              |   ^^^^^^^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_FindOnOtherKind_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            facts:
              oil_pan.gap: {type: length, range: 0..1 in, ask: How wide?, find: remove_starter}
            """));
        Assert.Equal(
            """
            b.yaml:6:69: error PR0211: 'remove_starter' works on 'starter' and cannot find 'oil_pan.gap'
            6 |   oil_pan.gap: {type: length, range: 0..1 in, ask: How wide?, find: remove_starter}
              |                                                                     ^^^^^^^^^^^^^^
              = declared here: a.yaml:39:3
            """,
            complaints);
    }

    [Fact]
    public void Read_FindUnknown_NamesTheNearest()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            facts:
              starter.gap: {type: length, range: 0..1 in, ask: How wide?, find: remove_startr}
            """));
        Assert.Equal(
            """
            b.yaml:6:69: error PR0201: there is no operation 'remove_startr'; did you mean 'remove_starter'?
            6 |   starter.gap: {type: length, range: 0..1 in, ask: How wide?, find: remove_startr}
              |                                                                     ^^^^^^^^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_TakenInUnknownAspect_NamesTheNearest()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            facts:
              starter.gap: {type: length, range: 0..1 in, ask: How wide?, taken_in: [vehicle.hight]}
            """));
        Assert.Equal(
            """
            b.yaml:6:82: error PR0201: 'vehicle' has no aspect 'hight'; did you mean 'height'?
            6 |   starter.gap: {type: length, range: 0..1 in, ask: How wide?, taken_in: [vehicle.hight]}
              |                                                                                  ^^^^^
            """,
            complaints);
    }
}
