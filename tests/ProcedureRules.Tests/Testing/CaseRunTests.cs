using ProcedureRules.Testing;
using Xunit;

namespace ProcedureRules.Tests.Testing;

/// <summary>Turns, rows and statements that replace those of the sheet.</summary>
public class CaseRunTests
{
    [Fact]
    public void Turns_InSequence_EachJudgeThePlanOfTheirMoment()
    {
        var result = Run("""
            expect: [ {step: drain_oil}, {question: engine.since_run} ]
            next:
              - state: [ engine.since_run=2 h ]
                expect: [ {no_question: engine.since_run}, {value: {engine.since_run: 2 h}} ]
              - done: [ raise_vehicle ]
                expect: [ {no_step: raise_vehicle}, {step: fill_oil} ]
            """);

        Assert.True(result.Passed, string.Join('\n', TestText.Lines([result]).Select(line => line.Text)));
        Assert.Equal([0, 0, 1, 1, 2, 2, 2], result.Expectations.Select(expectation => expectation.Turn));
    }

    [Fact]
    public void Done_StepThatThePlanDoesNotHave_Fails()
    {
        var failure = Assert.Single(Run("next: [ {done: [ remove_pan ], expect: [ {step: drain_oil} ]} ]").Failures);

        Assert.Equal("done: remove_pan", failure.Expected);
        Assert.Equal(4, failure.Span.Line);
    }

    [Fact]
    public void Rows_OfAScenario_AreCasesWithTheirOwnNamesAndPlaces()
    {
        var cases = GivenScenario.Read("""
            facts: {oil_pan.drop_available: "{drop}"}
            expect: [ {value: {oil_pan.drop_available: "{drop}"}} ]
            rows:
              - {row: short, with: {drop: 1 in}}
              - {row: long, with: {drop: 5 in}, facts: {oil_pan.gasket: cork}, expect: [ {value: {oil_pan.gasket: cork}} ]}
            """).Cases;

        Assert.Equal(["a pan: short", "a pan: long"], cases.Select(one => one.Name));
        Assert.Equal([7, 8], cases.Select(one => one.Span.Line));
        var results = ScenarioRunner.Run(cases, TestContext.Current.CancellationToken);
        Assert.Equal([1, 2], results.Select(result => result.Expectations.Count));
        Assert.All(results, result => Assert.True(result.Passed));
    }

    [Fact]
    public void Fact_OfTheScenario_StandsInPlaceOfTheSheets()
    {
        var set = GivenScenario.ReadWhole("""
            scenario: a pan
            vehicle: {parts: {oil_pan: oil_pan, engine: engine}, facts: {oil_pan.gasket: {value: cork, source: measured}}}
            jobs: [ change_oil ]
            facts: {oil_pan.gasket: rubber}
            expect: [ {value: {oil_pan.gasket: rubber}} ]
            """);

        Assert.True(Assert.Single(set.Cases).Run(TestContext.Current.CancellationToken).Passed);
    }

    [Fact]
    public void Run_OfACaseTwice_GivesTheSame()
    {
        var one = GivenScenario.Read("expect: [ {step: drain_oil}, {step: remove_pan} ]").Cases.Single();

        Assert.Equal(Came(one), Came(one));

        static string Came(ScenarioCase one) => string.Join('\n', one.Run(TestContext.Current.CancellationToken).Expectations.Select(result => result.Came));
    }

    private static CaseResult Run(string text)
    {
        var set = GivenScenario.Read(text);
        Assert.Equal("", string.Concat(set.Diagnostics.Select(mistake => mistake.ToSnippet())));
        return set.Cases.Single().Run(TestContext.Current.CancellationToken);
    }
}
