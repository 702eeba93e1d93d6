using ProcedureRules.Diagnostics;
using ProcedureRules.Testing;
using Xunit;

namespace ProcedureRules.Tests.Testing;

/// <summary>What is counted of rules that forbid a step, and so take their own premise out of the plan.</summary>
public class CoverageOfForbiddenStepsTests
{
    private const string Pack = """
        pack: lids
        version: 1.0.0
        about: Lids that are lifted or pried.
        places: [bench]
        kinds: {vehicle: {}, lid: {}}
        aspects:
          lid.seat: {states: [shut, open], normal: shut}
        facts:
          lid.soft: {type: yes_no, ask: "Is the {it} soft?"}
        operations:
          pry_lid: {on: lid, text: "Pry the {it} open", change: {seat: shut -> open}, undo: press_lid, place: bench, time: 1 min}
          unscrew_lid: {on: lid, text: "Unscrew the {it}", change: {seat: shut -> open}, undo: screw_lid, place: bench, time: 5 min}
          press_lid: {on: lid, text: "Press the {it} on", time: 1 min}
          screw_lid: {on: lid, text: "Screw the {it} on", time: 5 min}
        jobs:
          look_inside: {on: lid, text: Look inside, pass: [ it.seat is open ]}
        rules:
          - rule: a soft lid is not pried
            for: {s: step, k: lid}
            when: [ s does pry_lid, s on k, k.soft is yes ]
            then:
              - forbid: s
            because: It tears.
            basis: common practice
        """;

    private static readonly ProcedureEngine Engine = ProcedureEngine.Load([new SourceFile("lids.yaml", Pack)]).Engine!;

    [Theory]
    [InlineData("yes", "unscrew_lid", 1)]
    [InlineData("no", "pry_lid", 0)]
    public void Rule_ThatForbidsAStep_FiresWhereItKeepsItOutOfThePlan(string soft, string step, int fired)
    {
        var scenario = $"scenario: x\nvehicle: {{parts: {{lid: lid}}}}\njobs: [look_inside]\nfacts: {{lid.soft: {soft}}}\nexpect: [ {{step: {step}}} ]\n";
        var cases = ScenarioSet.Read(Engine, [new SourceFile("x.yaml", scenario)]).Cases;
        Assert.All(cases.Single().Run(cancellation: TestContext.Current.CancellationToken).Expectations, expectation => Assert.True(expectation.IsMet));

        var rule = Assert.Single(CoverageReport.Of(Engine, cases, TestContext.Current.CancellationToken).Rules);

        Assert.Equal((1, fired, fired), (rule.Matched, rule.Fired, rule.Conclusions.Single().Used));
    }
}
