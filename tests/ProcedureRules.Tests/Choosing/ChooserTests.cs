using ProcedureRules.Beliefs;
using ProcedureRules.Choosing;
using ProcedureRules.Planning;
using ProcedureRules.Plans;
using ProcedureRules.Tests.Engine;
using Xunit;

namespace ProcedureRules.Tests.Choosing;

public sealed class ChooserTests
{
    [Fact]
    public void Choose_WorkThatAMarkTakesAway_NaiveBoundWouldMissTheBest()
    {
        // Way 0 of the first choice brings a long job, unless the second one leaves its mark. As long as the second is open the long job may
        // be needed, and counting what may be needed puts way 0 behind way 1, which is dearer than both together.
        var beliefs = Pack(
            Choice("first", "job run on b", "{option: short, then: [ {do: short_work(b)} ]}", "{option: middling, then: [ {do: middling_work(b)} ]}"),
            Choice("second", "job run on b", "{option: mark, then: [ {relate: \"marked(b, b)\"} ]}", "{option: leave, then: [ {notice: left} ]}"),
            """
              - rule: long
                for: {b: vehicle, s: step}
                when: [ s does short_work, s on b, "not marked(b, b)" ]
                then: [ {do: long_work(b)} ]
                if_unknown: behind_check
                because: it says so
                basis: invented
            """);
        var book = ChoiceBook.Of(beliefs.Network);
        var first = book.Keys.Single(key => ChoiceName.Of(key, book.Keys) == "first");

        var best = Best(beliefs, book);

        var half = beliefs.With([new Supposition.Takes(first, 0)]);
        var bound = new ChoiceBounds(book).Node(half, [.. book.Keys.Select(key => key.Equals(first) ? 0 : ChoiceNode.Open)], new ChoiceGain?[book.Keys.Count]).Bound;
        Assert.Equal(2 * 10 * 60_000, best.Cost.Twice);
        Assert.True(Cost.Under(half).Twice > 2 * 40 * 60_000, "what may be needed is not a bound");
        Assert.True(bound.Twice <= best.Cost.Twice, "what is sure is one");
    }

    [Fact]
    public void Choose_FewerStepsDownFromTheFirstRanks_BeatLabour()
    {
        // Way a saves labour but leads to a second choice of which only the second rank is open.
        var beliefs = Pack(
            Choice("first", "job run on b", "{option: a, then: [ {do: short_work(b)}, {relate: \"marked(b, b)\"} ]}", "{option: b, then: [ {do: middling_work(b)} ]}"),
            Choice("second", "job run on b, \"marked(b, b)\"", "{option: safe, rank: 1, if: \"sealed(b, b)\", then: [ {notice: safe} ]}", "{option: unsafe, rank: 2, then: [ {notice: unsafe} ]}"));

        Assert.Equal(2 * 40 * 60_000, Best(beliefs, ChoiceBook.Of(beliefs.Network)).Cost.Twice);
    }

    [Fact]
    public void Choose_LimitHit_BestFoundComesWithABound()
    {
        var random = new Random(3);
        for (var i = 0; i < 40; i++)
        {
            var program = new ChoiceProgram(random);
            var beliefs = program.Believe();
            if (program.Best() is not { } optimum) continue;
            var book = ChoiceBook.Of(beliefs.Network);

            var found = new Chooser(book, new PlannerOptions { MostHypotheses = 1 }, TestContext.Current.CancellationToken).From(beliefs).FirstOrDefault(decision => decision.Faults.Count == 0);

            if (found is null) continue;
            if (found.Bound is { } bound) Assert.InRange(bound, 0, found.Cost.Likely);
            else Assert.Equal(optimum.Twice * 60_000, found.Cost.Twice);
        }
    }

    [Fact]
    public void Plan_LimitHit_SaysTheBound()
    {
        var plan = Planner.Plan(Shipped.Open("oil-pan").Beliefs, new PlannerOptions { MostHypotheses = 8 }, TestContext.Current.CancellationToken).Plan!;

        Assert.NotNull(plan.ChoicesBound);
        Assert.Null(Shipped.Plan("oil-pan").ChoicesBound);
    }

    private static Decision Best(BeliefState beliefs, ChoiceBook book) =>
        new Chooser(book, PlannerOptions.Default, TestContext.Current.CancellationToken).From(beliefs).First(decision => decision.Faults.Count == 0);

    private static string Choice(string name, string when, params string[] options) => $$"""
          - rule: {{name}}
            for: {b: vehicle}
            when: [ {{when}} ]
            then:
              - one_of: [ {{string.Join(", ", options)}} ]
            because: it says so
            basis: invented
        """;

    // The rules are indented for the list that they stand in.
    private static BeliefState Pack(params string[] rules) => ChoiceProgram.Believe("""
        pack: program
        version: 1.0.0
        about: Choices
        places: [bay]
        kinds: {vehicle: {}}
        relations:
          marked: {of: [vehicle, vehicle], text: "{a} is marked"}
          sealed: {of: [vehicle, vehicle], text: "{a} is sealed"}
        operations:
          short_work: {on: vehicle, text: short, place: bay, phase: work, time: 10 min}
          middling_work: {on: vehicle, text: middling, place: bay, phase: work, time: 40 min}
          long_work: {on: vehicle, text: long, place: bay, phase: work, time: 200 min}
        jobs:
          run: {on: vehicle, text: run}
        rules:

        """ + string.Join('\n', rules).ReplaceLineEndings("\n") + "\n");
}
