using Xunit;

namespace ProcedureRules.Tests.Packs;

/// <summary>Mistakes in names, kinds and aspects of packs.</summary>
public sealed class PackNameMistakesTests
{
    [Fact]
    public void Read_MisspeltKind_NamesTheNearest()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            kinds:
              relay: {is: oil_pna}
            """));
        Assert.Equal(
            """
            b.yaml:6:15: error PR0201: there is no kind 'oil_pna'; did you mean 'oil_pan'?
            6 |   relay: {is: oil_pna}
              |               ^^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_MisspeltKindThatAnotherGoesWith_NamesTheNearest()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            kinds:
              relay: {goes_with: [starter, oil_pna]}
            """));
        Assert.Equal(
            """
            b.yaml:6:32: error PR0201: there is no kind 'oil_pna'; did you mean 'oil_pan'?
            6 |   relay: {goes_with: [starter, oil_pna]}
              |                                ^^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_AspectOfGeneralKindAgain_IsRefused()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            kinds:
              gear_starter: {is: starter}
            aspects:
              gear_starter.place: {states: [in, out], normal: in}
            """));
        Assert.Equal(
            """
            b.yaml:8:3: error PR0203: 'gear_starter.place' is already an aspect of the more general kind 'starter'
            8 |   gear_starter.place: {states: [in, out], normal: in}
              |   ^^^^^^^^^^^^^^^^^^
              = declared here: a.yaml:15:3
            """,
            complaints);
    }

    [Fact]
    public void Read_AspectAndFactOfOneName_IsRefused()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            facts:
              starter.place: {type: yes_no, ask: Is it in place?}
            """));
        Assert.Equal(
            """
            b.yaml:6:3: error PR0203: 'starter.place' is both an aspect and a fact
            6 |   starter.place: {type: yes_no, ask: Is it in place?}
              |   ^^^^^^^^^^^^^
              = the aspect is declared here: a.yaml:15:3
            """,
            complaints);
    }

    [Fact]
    public void Read_RootKindDefined_IsRefused()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            kinds:
              part: {}
            """));
        Assert.Equal(
            """
            b.yaml:6:3: error PR0203: the kind 'part' is there from the start and cannot be defined
            6 |   part: {}
              |   ^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_RingOfKinds_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            kinds:
              a: {is: b}
              b: {is: c}
              c: {is: a}
              d: {is: c}
            """));
        Assert.Equal(
            """
            b.yaml:6:11: error PR0205: these kinds are each a kind of the next: a -> b -> c -> a
            6 |   a: {is: b}
              |           ^
            """,
            complaints);
    }

    [Fact]
    public void Read_StateTwice_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            aspects:
              starter.lid: {states: [open, shut, open], normal: open}
            """));
        Assert.Equal(
            """
            b.yaml:6:38: error PR0207: the state 'open' stands twice
            6 |   starter.lid: {states: [open, shut, open], normal: open}
              |                                      ^^^^
              = first here: b.yaml:6:26
            """,
            complaints);
    }

    [Fact]
    public void Read_NormalIsNoState_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            aspects:
              starter.lid: {states: [open, shut], normal: shot, mark: yes}
            """));
        Assert.Equal(
            """
            b.yaml:6:47: error PR0207: 'shot' is not a state of 'starter.lid'; did you mean 'shut'?
            6 |   starter.lid: {states: [open, shut], normal: shot, mark: yes}
              |                                               ^^^^
              = note: its states are 'open' or 'shut'
            """,
            complaints);
    }

    [Fact]
    public void Read_WhileOfUnknownState_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            aspects:
              starter.lid:
                states: [open, shut]
                normal: shut
                while:
                  opn: [starter.place is off]
            """));
        Assert.Equal(
            """
            b.yaml:10:7: error PR0207: 'opn' is not a state of 'starter.lid'; did you mean 'open'?
            10 |       opn: [starter.place is off]
               |       ^^^
               = note: its states are 'open' or 'shut'
            """,
            complaints);
    }
}
