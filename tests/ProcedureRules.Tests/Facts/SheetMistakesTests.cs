using Xunit;

namespace ProcedureRules.Tests.Facts;

/// <summary>Mistakes in the parts and heads of vehicle sheets.</summary>
public sealed class SheetMistakesTests
{
    [Fact]
    public void Read_MisspeltKind_NamesTheNearest()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            parts:
              starter: startr
            """);
        Assert.Equal(
            """
            van.yaml:3:12: error PR0509: there is no kind 'startr'; did you mean 'starter'?
            3 |   starter: startr
              |            ^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_NoPartOfThatNameOrKind_NamesTheNearest()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            parts:
              oil_pna: no
            """);
        Assert.Equal(
            """
            van.yaml:3:3: error PR0509: 'oil_pna' is neither a part that is known so far nor a kind; did you mean 'oil_pan'?
            3 |   oil_pna: no
              |   ^^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_NameOfAnotherKind_IsRefused()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            parts:
              starter: oil_pan
            """);
        Assert.Equal(
            """
            van.yaml:3:3: error PR0509: 'starter' is the name of a kind, and 'oil_pan' is not one of that kind; give the part another name
            3 |   starter: oil_pan
              |   ^^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_SecondVehicle_IsRefused()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            parts:
              vehicle: vehicle
              trailer: vehicle
            """);
        Assert.Equal(
            """
            van.yaml:3:3: error PR0509: every sheet has exactly one vehicle, named 'vehicle', without being told
            3 |   vehicle: vehicle
              |   ^^^^^^^
            van.yaml:4:12: error PR0509: every sheet has exactly one vehicle, named 'vehicle', without being told
            4 |   trailer: vehicle
              |            ^^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_MisspeltArchetype_NamesTheNearest()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            archetype: frnt
            """,
            archetype: """
            vehicle: van
            """);
        Assert.Equal(
            """
            van.yaml:2:12: error PR0510: there is no archetype 'frnt'; did you mean 'front'?
            2 | archetype: frnt
              |            ^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_ArchetypeOfAnArchetype_IsTold()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            archetype: front
            """,
            archetype: """
            vehicle: van
            archetype: front
            """);
        Assert.Equal(
            """
            front.yaml:2:12: error PR0510: an archetype does not start from another one
            2 | archetype: front
              |            ^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_PackForASheet_IsTold()
    {
        var complaints = GivenSheets.Complaints(
            """
            pack: one
            version: 1.0.0
            about: x
            kinds: {}
            """);
        Assert.Equal(
            """
            van.yaml:1:1: error PR0219: this is a pack, and a vehicle sheet is expected here
            1 | pack: one
              | ^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_MistakesEverywhere_AllToldAtOnce()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            colour: red
            parts:
              starter: startr
              pan: oil_pan
            relations:
              - covers(pan, starter)
            facts:
              pan.drop_available: 2
              pan.dented: maybe
            arrival:
              pan.place: gone
            """);
        Assert.Equal(
            """
            van.yaml:2:1: error PR0101: unknown key 'colour' in a vehicle sheet
            2 | colour: red
              | ^^^^^^
            van.yaml:4:12: error PR0509: there is no kind 'startr'; did you mean 'starter'?
            4 |   starter: startr
              |            ^^^^^^
            van.yaml:9:23: error PR0504: a length is due, and '2' has no unit (thou, in, ft, mm, m, km)
            9 |   pan.drop_available: 2
              |                       ^
            van.yaml:10:15: error PR0504: 'maybe' is not a value of 'pan.dented'
            10 |   pan.dented: maybe
               |               ^^^^^
               = note: its values are 'no' or 'yes'
            van.yaml:12:14: error PR0504: 'gone' is not a state of 'pan.place'
            12 |   pan.place: gone
               |              ^^^^
               = note: its states are 'fitted', 'lowered' or 'off'
            """,
            complaints);
    }
}
