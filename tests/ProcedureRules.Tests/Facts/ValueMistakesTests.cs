using Xunit;

namespace ProcedureRules.Tests.Facts;

/// <summary>Mistakes in facts and states of vehicle sheets.</summary>
public sealed class ValueMistakesTests
{
    [Fact]
    public void Read_FactOfUnknownPart_NamesTheNearest()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            parts:
              left_mount: engine_mount
            facts:
              lft_mount.gap: 2 in
            """);
        Assert.Equal(
            """
            van.yaml:5:3: error PR0501: the sheet has no part 'lft_mount'; did you mean 'left_mount'?
            5 |   lft_mount.gap: 2 in
              |   ^^^^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_FactOfPartThatIsNotOnTheSheet_SaysToAddIt()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            facts:
              starter.bolt_torque: 35 lb.ft
            """);
        Assert.Equal(
            """
            van.yaml:3:3: error PR0501: the sheet has no part of the kind 'starter'
            3 |   starter.bolt_torque: 35 lb.ft
              |   ^^^^^^^
              = note: add one under 'parts', such as 'starter: starter'
            """,
            complaints);
    }

    [Fact]
    public void Read_FactOfAbsentPart_NamesTheStatement()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            parts:
              starter: no
            facts:
              starter.bolt_torque: 35 lb.ft
            """);
        Assert.Equal(
            """
            van.yaml:5:3: error PR0501: the sheet says that there is no 'starter'
            5 |   starter.bolt_torque: 35 lb.ft
              |   ^^^^^^^
              = here: van.yaml:3:3
            """,
            complaints);
    }

    [Fact]
    public void Read_KindOfSeveralParts_ListsThem()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            parts:
              left: dust_cover
              right: dust_cover
              starter: starter
            relations:
              - covers(dust_cover, starter)
            """);
        Assert.Equal(
            """
            van.yaml:7:12: error PR0502: there are several parts of the kind 'dust_cover': name 'left' or 'right'
            7 |   - covers(dust_cover, starter)
              |            ^^^^^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_MisspeltFact_NamesTheNearest()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            parts: {starter: starter}
            facts:
              starter.bolt_torqe: 35 lb.ft
            """);
        Assert.Equal(
            """
            van.yaml:4:11: error PR0503: 'starter' has no fact 'bolt_torqe'; did you mean 'bolt_torque'?
            4 |   starter.bolt_torqe: 35 lb.ft
              |           ^^^^^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_StateUnderFacts_SaysWhereItBelongs()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            facts:
              vehicle.height: raised
            """);
        Assert.Equal(
            """
            van.yaml:3:11: error PR0503: 'vehicle.height' is a state: it stands under 'arrival'
            3 |   vehicle.height: raised
              |           ^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_FactUnderArrival_SaysWhereItBelongs()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            parts: {starter: starter}
            arrival:
              starter.solenoid: remote
            """);
        Assert.Equal(
            """
            van.yaml:4:11: error PR0503: 'starter.solenoid' is a fact: it stands under 'facts'
            4 |   starter.solenoid: remote
              |           ^^^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_UnitMissing_IsTold()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            parts: {oil_pan: oil_pan}
            facts:
              oil_pan.drop_available: 2
            """);
        Assert.Equal(
            """
            van.yaml:4:27: error PR0504: a length is due, and '2' has no unit (thou, in, ft, mm, m, km)
            4 |   oil_pan.drop_available: 2
              |                           ^
            """,
            complaints);
    }

    [Fact]
    public void Read_OtherDimension_IsTold()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            parts: {oil_pan: oil_pan}
            facts:
              oil_pan.drop_available: 2 psi
            """);
        Assert.Equal(
            """
            van.yaml:4:27: error PR0504: a length is due, not a gauge pressure
            4 |   oil_pan.drop_available: 2 psi
              |                           ^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_AbsoluteForGaugePressure_IsTold()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            parts: {oil_pan: oil_pan}
            facts:
              oil_pan.pressure: 20 psia
            """);
        Assert.Equal(
            """
            van.yaml:4:21: error PR0504: a gauge pressure is due, not an absolute pressure: one counts from the air around, the other from empty space; at sea level it would be 5.304 psi
            4 |   oil_pan.pressure: 20 psia
              |                     ^^^^^^^
            """,
            complaints);
    }

    [Fact]
    public void Read_UnknownUnit_NamesTheNearest()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            parts: {starter: starter}
            facts:
              starter.bolt_torque: 35 lbtf
            """);
        Assert.Equal(
            """
            van.yaml:4:27: error PR0504: 'lbtf' is not a unit here; did you mean 'lb ft'?
            4 |   starter.bolt_torque: 35 lbtf
              |                           ^^^^
            """,
            complaints);
    }

    [Theory]
    [InlineData("35 furlong", "'furlong' is not a unit here")]
    [InlineData("as usual", "a number is due, not 'as'")]
    public void Read_WhatIsNoFigure_SaysWhatIsDue(string value, string fault)
    {
        var complaints = GivenSheets.Complaints(
            $$"""
            vehicle: van
            parts: {starter: starter}
            facts:
              starter.bolt_torque: {{value}}
            """);
        Assert.Contains(fault, complaints, StringComparison.Ordinal);
        Assert.EndsWith("= note: a torque is due (lb.in, lb.ft, N.m)", complaints.TrimEnd(), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_MisspeltWord_NamesTheNearest()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            parts: {starter: starter}
            facts:
              starter.solenoid: on_startr
            """);
        Assert.Equal(
            """
            van.yaml:4:21: error PR0504: 'on_startr' is not a value of 'starter.solenoid'; did you mean 'on_starter'?
            4 |   starter.solenoid: on_startr
              |                     ^^^^^^^^^
              = note: its values are 'on_starter' or 'remote'
            """,
            complaints);
    }

    [Fact]
    public void Read_ImplausibleValue_AsksForTheUnit()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            parts: {oil_pan: oil_pan}
            facts:
              oil_pan.drop_available: 2 m
            """);
        Assert.Equal(
            """
            van.yaml:4:27: warning PR0505: '2 m' is outside what occurs for 'oil_pan.drop_available': 0..12 in; is this the unit you mean? '2 in' would fit
            4 |   oil_pan.drop_available: 2 m
              |                           ^^^
              = note: it is not used and will be asked again; if it is right, state it as sure
              = declared here: a.yaml:21:3
            """,
            complaints);
    }

    [Fact]
    public void Read_ImplausibleValueInAnyUnit_SaysSo()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            parts: {oil_pan: oil_pan}
            facts:
              oil_pan.drop_available: -900 in
            """);
        Assert.Equal(
            """
            van.yaml:4:27: warning PR0505: '-900 in' is outside what occurs for 'oil_pan.drop_available': 0..12 in
            4 |   oil_pan.drop_available: -900 in
              |                           ^^^^^^^
              = note: it is not used and will be asked again; if it is right, state it as sure
              = declared here: a.yaml:21:3
            """,
            complaints);
    }

    [Fact]
    public void Read_FactStatedByPartAndByKind_NamesBothPlaces()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            parts: {pan: oil_pan}
            facts:
              pan.dented: yes
              oil_pan.dented: no
            """);
        Assert.Equal(
            """
            van.yaml:5:3: error PR0507: 'pan.dented' stands twice in this file
            5 |   oil_pan.dented: no
              |   ^^^^^^^^^^^^^^
              = first here: van.yaml:4:3
            """,
            complaints);
    }

    [Fact]
    public void Read_DerivedFactStated_NamesTheDeclaration()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            parts: {oil_pan: oil_pan}
            facts:
              oil_pan.drop_needed: 2 in
              oil_pan.rise: 1 in
            """);
        Assert.Equal(
            """
            van.yaml:4:11: error PR0508: 'oil_pan.drop_needed' is derived by rules and cannot be stated
            4 |   oil_pan.drop_needed: 2 in
              |           ^^^^^^^^^^^
              = declared here: a.yaml:25:3
            van.yaml:5:11: error PR0508: 'oil_pan.rise' collects what rules demand and cannot be stated
            5 |   oil_pan.rise: 1 in
              |           ^^^^
              = declared here: a.yaml:26:3
            """,
            complaints);
    }

    [Fact]
    public void Read_UnknownState_NamesTheNearest()
    {
        var complaints = GivenSheets.Complaints(
            """
            vehicle: van
            arrival:
              vehicle.height: rased
            """);
        Assert.Equal(
            """
            van.yaml:3:19: error PR0504: 'rased' is not a state of 'vehicle.height'; did you mean 'raised'?
            3 |   vehicle.height: rased
              |                   ^^^^^
              = note: its states are 'ground' or 'raised'
            """,
            complaints);
    }
}
