using System.Text.Json;
using ProcedureRules.Explaining;
using ProcedureRules.Tests.ConsoleHost;
using ProcedureRules.Tests.Engine;
using ProcedureRules.Tests.Repository;
using Xunit;

namespace ProcedureRules.Tests.Explaining;

/// <summary>What hangs on the questions of a plan.</summary>
public class QuestionOutlookTests
{
    [Fact]
    public void Search_OfTwoQuestionsThatHideEachOther_FindsThem()
    {
        var session = OnePack.Open(Pack("  - {rule: either, for: {s: step}, when: [ s does put_on, pump.seeps is yes or pump.worn is yes ], then: [ {caution: It drips.} ], because: x, basis: none}\n"), "pump: pump", "clean");
        var plan = Shipped.PlanOf(session);

        var alone = session.Outlook(plan, withAnswers: true, TestContext.Current.CancellationToken);
        var search = QuestionSearch.Of(plan, session.Beliefs, _ => false, TestContext.Current.CancellationToken);

        Assert.All(alone, outlook => Assert.False(outlook.Matters));
        Assert.Equal(2, alone.Count);
        Assert.NotNull(search.Next?.Beside);
        Assert.NotEqual(search.Next.Question.Id, search.Next.Beside.Id);
    }

    [Theory]
    [InlineData("pump.worn is yes", "pump.worn is no", true)]
    [InlineData("pump.worn is yes", "pump.seeps is no", false)]
    [InlineData("pump.gap < 2 in", "pump.gap >= 2 in", true)]
    [InlineData("pump.gap < 2 in", "pump.gap > 2 in", false)]
    [InlineData("pump.gap < 3 in", "pump.gap > 2 in", true)]
    [InlineData("pump.gap < 2 in", "pump.gap > 3 in", false)]
    public void Always_OfAQuestion_HasTheStepsThatEveryAnswerAsksFor(string one, string other, bool isAlways)
    {
        var rules = string.Concat(new[] { one, other }.Select((when, i) =>
            $"  - {{rule: way {i}, for: {{s: step}}, when: [ s does take_off, {when} ], then: [ {{need: vehicle.height is raised}} ], because: x, basis: none}}\n"));
        var session = OnePack.Open(Pack(rules), "pump: pump", "clean");
        var plan = Shipped.PlanOf(session);
        Assert.NotEmpty(plan.Steps.Single(step => step.Step.Operation.Name == "raise").Provisional);

        var always = session.Outlook(plan, withAnswers: true, TestContext.Current.CancellationToken).SelectMany(outlook => outlook.Always).Select(step => step.Step.Operation.Name);

        Assert.Equal(isAlways, always.Contains("raise"));
    }

    [Fact]
    public void Outlook_OfTheDemoJob_RanksWhatCanHurtThenWhatMovesTheMostLabour()
    {
        var session = Shipped.Open("oil-pan-unmeasured");

        var outlook = session.Outlook(Shipped.PlanOf(session), cancellation: TestContext.Current.CancellationToken);

        Assert.NotEmpty(outlook);
        Assert.All(outlook, one => Assert.Empty(one.Answers));
        foreach (var (one, next) in outlook.Zip(outlook.Skip(1)))
        {
            var (first, second) = (one.Question, next.Question);
            Assert.True(first.After.Count == 0 || second.After.Count > 0);
            if (first.After.Count > 0 != second.After.Count > 0) continue;
            Assert.True(first.IsSafety || !second.IsSafety);
            if (first.IsSafety == second.IsSafety) Assert.True(Math.Round(one.Swing.High / 60) >= Math.Round(next.Swing.High / 60));
        }
    }

    [Fact]
    public void Outlook_OfAQuestionThatTakesWork_SaysHowMuchAndWithWhichTool()
    {
        var session = Shipped.Open("poor-cooling");

        var outlook = session.Outlook(Shipped.PlanOf(session), cancellation: TestContext.Current.CancellationToken).Single(one => one.Question.Id == "ac_circuit.identified");

        Assert.True(outlook.Finding.High > 0);
        Assert.Contains(outlook.Tools, tool => tool.ToString() == "refrigerant identifier");
    }

    [Fact]
    public void Plan_WithAnswers_SaysWhatEachWouldMakeOfIt()
    {
        var order = RepositoryFiles.PathOf("samples", "jobs", "battery.yaml");

        var (exit, output, error) = RunHost.With("plan", order, "--answers");
        Assert.Equal((0, ""), (exit, error));
        Assert.Contains("      If ", output, StringComparison.Ordinal);

        using var json = JsonDocument.Parse(RunHost.With("plan", order, "--answers", "--format", "json").Output);
        var asked = json.RootElement.GetProperty("questions").EnumerateArray().Where(question => !question.TryGetProperty("atStep", out _)).ToList();
        Assert.NotEmpty(asked);
        Assert.All(asked, question => Assert.True(question.GetProperty("answers").GetArrayLength() > 1));
        Assert.Contains(asked, question => question.GetProperty("answers").EnumerateArray().Any(answer => answer.GetProperty("matters").GetBoolean()));
    }

    private static string Pack(string rules) => $$"""
        pack: pumps
        version: 1.0.0
        about: A pump that is cleaned
        places: [bay, bench]
        kinds:
          vehicle: {}
          pump: {}
        aspects:
          vehicle.height: {states: [ground, raised], normal: ground}
          pump.place: {states: [fitted, removed], normal: fitted}
        facts:
          pump.worn: {type: yes_no, ask: "Is the {it} worn?"}
          pump.seeps: {type: yes_no, ask: "Does the {it} seep?"}
          pump.gap: {type: length, range: 0..5 in, ask: "How much room is there at the {it}?"}
        operations:
          raise: {on: vehicle, text: Raise it, change: {height: ground -> raised}, undo: lower, place: bay, time: 5 min}
          lower: {on: vehicle, text: Lower it, time: 5 min}
          take_off: {on: pump, text: "Take off the {it}", change: {place: fitted -> removed}, undo: put_on, place: bay, time: 10 min}
          put_on: {on: pump, text: "Put on the {it}", time: 10 min}
        jobs:
          clean: {on: pump, text: "Clean behind the {it}", do: [ take_off(it) ]}
        rules:

        """ + rules;
}
