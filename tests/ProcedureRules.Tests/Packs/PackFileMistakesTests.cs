using Xunit;

namespace ProcedureRules.Tests.Packs;

/// <summary>Mistakes between the files of packs.</summary>
public sealed class PackFileMistakesTests
{
    [Fact]
    public void Read_KindOfUnusedPack_NamesThePackToAdd()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            """
            pack: shop
            version: 1.0.0
            about: x
            kinds:
              gear_starter: {is: starter}
            """);
        Assert.Equal(
            """
            b.yaml:5:22: error PR0202: the kind 'starter' belongs to the pack 'base', which this pack does not use
            5 |   gear_starter: {is: starter}
              |                      ^^^^^^^
              = declared here: a.yaml:8:3
              = note: add 'base' to 'uses'
            """,
            complaints);
    }

    [Fact]
    public void Read_SameNameInTwoPacks_NamesBothPlaces()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            kinds:
              starter: {}
            """));
        Assert.Equal(
            """
            b.yaml:6:3: error PR0203: the kind 'starter' is defined twice
            6 |   starter: {}
              |   ^^^^^^^
              = first here: a.yaml:8:3
            """,
            complaints);
    }

    [Fact]
    public void Read_SamePlaceInTwoPacks_NamesBothPlaces()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            places: [under]
            """));
        Assert.Equal(
            """
            b.yaml:5:10: error PR0203: the place 'under' is defined twice
            5 | places: [under]
              |          ^^^^^
              = first here: a.yaml:4:15
            """,
            complaints);
    }

    [Fact]
    public void Read_SameRuleNameInTwoPacks_NamesBothPlaces()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            rules:
              - rule: the pan needs to drop below the starter
                then: [ {stop: x} ]
                because: x
                basis: x
            """));
        Assert.Equal(
            """
            b.yaml:6:11: error PR0203: the rule 'the pan needs to drop below the starter' is defined twice
            6 |   - rule: the pan needs to drop below the starter
              |           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
              = first here: a.yaml:62:11
            """,
            complaints);
    }

    [Fact]
    public void Read_MistakesEverywhere_AllToldAtOnce()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            GivenPacks.Pack("""
            kinds:
              relay: {is: prt}
            facts:
              starter.gap: {type: length, ask: How wide?}
            operations:
              knock: {on: startr, text: Knock, place: bay, time: 1 parsec}
            jobs:
              fix: {on: relais, text: Fix}
            things: {}
            """));
        Assert.Equal(
            """
            b.yaml:6:15: error PR0201: there is no kind 'prt'; did you mean 'part'?
            6 |   relay: {is: prt}
              |               ^^^
            b.yaml:8:3: error PR0208: 'starter.gap' is a quantity and needs a 'range': what can occur in the trade
            8 |   starter.gap: {type: length, ask: How wide?}
              |   ^^^^^^^^^^^
            b.yaml:10:15: error PR0201: there is no kind 'startr'; did you mean 'starter'?
            10 |   knock: {on: startr, text: Knock, place: bay, time: 1 parsec}
               |               ^^^^^^
            b.yaml:10:56: error PR0215: 'parsec' is not a unit here
            10 |   knock: {on: startr, text: Knock, place: bay, time: 1 parsec}
               |                                                        ^^^^^^
            b.yaml:12:13: error PR0201: there is no kind 'relais'; did you mean 'relay'?
            12 |   fix: {on: relais, text: Fix}
               |             ^^^^^^
            b.yaml:13:1: error PR0101: unknown key 'things' in a pack
            13 | things: {}
               | ^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_UnknownUsedPack_NamesTheNearestAndNoMoreThanThat()
    {
        var complaints = GivenPacks.Complaints(
            GivenPacks.Base,
            """
            pack: shop
            version: 1.0.0
            about: x
            uses: [bsae]
            kinds:
              gear_starter: {is: starter}
            """);
        Assert.Equal(
            """
            b.yaml:4:8: error PR0204: there is no pack 'bsae'; did you mean 'base'?
            4 | uses: [bsae]
              |        ^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_RingOfUses_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            """
            pack: one
            version: 1.0.0
            about: x
            uses: [two]
            kinds: {vehicle: {}}
            """,
            """
            pack: two
            version: 1.0.0
            about: x
            uses: [one]
            """);
        Assert.Equal(
            """
            a.yaml:4:8: error PR0204: these packs use each other in a ring: one -> two -> one
            4 | uses: [two]
              |        ^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_SamePackTwice_NamesBothPlaces()
    {
        var complaints = GivenPacks.Complaints(
            """
            pack: one
            version: 1.0.0
            about: x
            kinds: {vehicle: {}}
            """,
            """
            pack: one
            version: 1.0.0
            about: x
            """);
        Assert.Equal(
            """
            b.yaml:1:7: error PR0203: the pack 'one' is defined twice
            1 | pack: one
              |       ^^^
              = first here: a.yaml:1:7
            """,
            complaints);
    }

    [Fact]
    public void Read_NoVehicleKind_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            """
            pack: one
            version: 1.0.0
            about: x
            """);
        Assert.Equal(
            """
            a.yaml:1:7: error PR0206: no pack defines the kind 'vehicle', which every sheet has one of
            1 | pack: one
              |       ^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_VersionOfTwoNumbers_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            """
            pack: one
            version: 1.0
            about: x
            kinds: {vehicle: {}}
            """);
        Assert.Equal(
            """
            a.yaml:2:10: error PR0105: '1.0' has the wrong form: three numbers with dots between them expected
            2 | version: 1.0
              |          ^^^
              = note: for example '1.0.0'
            """,
            complaints);
    }

    [Fact]
    public void Read_BrokenFileBesideAGoodOne_HidesNothingAndBlamesNobody()
    {
        var complaints = GivenPacks.Complaints(
            """
            pack: one
            kinds: {vehicle: {}, lamp: {}
            facts: {
            """,
            """
            pack: two
            version: 1.0.0
            about: x
            uses: [one]
            kinds:
              bulb: {is: lamp}
            facts:
              bulb.power: {type: powr, ask: How strong?}
            """);
        Assert.Equal(
            """
            a.yaml:3:1: error PR0005: this is not well-formed YAML: a bracket, a comma or a quote is missing
            3 | facts: {
              | ^
            b.yaml:8:22: error PR0208: there is no type 'powr'; did you mean 'power'?
            8 |   bulb.power: {type: powr, ask: How strong?}
              |                      ^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_VehicleSheetAmongThePacks_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            """
            pack: one
            version: 1.0.0
            about: x
            kinds: {vehicle: {}}
            """,
            """
            vehicle: Demo van
            parts: {starter: starter}
            """);
        Assert.Equal(
            """
            b.yaml:1:1: error PR0219: this is a vehicle sheet, and a pack is expected here
            1 | vehicle: Demo van
              | ^^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_ListInsteadOfAPack_IsTold()
    {
        var complaints = GivenPacks.Complaints(
            """
            - pack: one
            """);
        Assert.Equal(
            """
            a.yaml:1:1: error PR0103: a pack (a mapping) is expected here, this is a list
            1 | - pack: one
              | ^^^^^^^^^^^
            """,
            complaints);
    }
}
