using System.Text.Json;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;
using ProcedureRules.Reports;
using ProcedureRules.Scheduling;
using ProcedureRules.Tests.Engine;
using Xunit;

namespace ProcedureRules.Tests.Reports;

/// <summary>No caution, check, hold, wait or stop of a plan is lost on its way to paper, in any format, for any shipped job.</summary>
public class NothingLostTests
{
    public static TheoryData<string> Orders => new(Shipped.Orders);

    [Theory]
    [MemberData(nameof(Orders))]
    public void Report_OfAShippedJob_TellsAllThatGuardsAStepBeforeItAndAllChecksAtIt(string order)
    {
        var plan = Shipped.Plan(order);

        Assert.All(["text", "markdown", "html"], format =>
        {
            var report = FlatReport.Of(format, plan);
            var (behind, colon, dot) = (0, format == "text" ? ":" : "", format == "html" ? "" : ".");
            AllIn(Before(plan, First(plan)), plan.Stops.Select(stop => $"{(stop.IsSure ? "STOP" : "STOP?")} {stop.Text}"));
            AllIn(Before(plan, First(plan)), plan.Cautions.Select(Words));
            AllIn(report, plan.Holds.Select(hold => hold.Text.ToString()));
            foreach (var (step, next) in plan.Steps.Zip(plan.Steps.Skip(1).Append(null)))
            {
                var before = Before(plan, step);
                AllIn(before, step.Cautions.Select(Words));
                AllIn(before, step.Holds.Select(hold => $"HOLD {hold.Text}"));
                AllIn(before, step.Waits.Select(wait => wait.Text.ToString()));
                behind += before.Length;
                AllIn(Before(plan, next), step.Checks.Select(check => check.Text.ToString()).Concat(step.Detail.Select(detail => detail.ToString())));
            }

            string Words(PlanCaution caution) => $"{caution.Signal.ToString().ToUpperInvariant()}{colon} {caution.Text}";

            // What stands between the step before and this one.
            string Before(Plan of, PlanStep? step)
            {
                if (step is null) return report[behind..];
                var at = report.IndexOf(FlatReport.OneLine($" {step.Number}{dot} {step.Text} "), behind, StringComparison.Ordinal);
                Assert.True(at >= behind, $"{format}: step {step.Number} of {of.Situation.Title}");
                return report[behind..(at + 1)];
            }
        });
    }

    [Theory]
    [MemberData(nameof(Orders))]
    public void Json_OfAShippedJob_HasAllAtItsStep(string order)
    {
        var plan = Shipped.Plan(order);

        using var json = JsonDocument.Parse(PlanJson.Write(plan, UnitSystem.Us));

        Assert.Equal(plan.Cautions.Select(caution => caution.Text.ToString()), Texts(json.RootElement, "cautions"));
        Assert.Equal(plan.Holds.Select(hold => hold.Text.ToString()), Texts(json.RootElement, "holds"));
        foreach (var (step, written) in plan.Steps.Zip(json.RootElement.GetProperty("steps").EnumerateArray()))
        {
            Assert.Equal(step.Cautions.Select(caution => caution.Text.ToString()), Texts(written, "cautions"));
            Assert.Equal(step.Checks.Select(check => check.Text.ToString()), Texts(written, "checks"));
            Assert.Equal(step.Holds.Select(hold => hold.Text.ToString()), Texts(written, "holds"));
            Assert.Equal(step.Waits.Select(wait => wait.Text.ToString()), Texts(written, "waits"));
        }
    }

    [Theory]
    [InlineData("oil-pan")]
    [InlineData("compressor")]
    [InlineData("clutch")]
    [InlineData("hybrid-battery")]
    public void Schedule_OfAShippedJob_TellsTheCautionsOfEachStep(string order)
    {
        var plan = Shipped.Plan(order);

        var report = FlatReport.OneLine(string.Join('\n', ScheduleText.Lines(
            Scheduler.Schedule(plan, Workshop.Usual, new DateTime(2026, 11, 23, 8, 0, 0), TestContext.Current.CancellationToken), UnitSystem.Us).Select(line => line.Text)));

        AllIn(report, plan.Cautions.Concat(plan.Steps.SelectMany(step => step.Cautions)).Select(caution => $"{caution.Signal.ToString().ToUpperInvariant()}: {caution.Text}"));
    }

    // As often as it is said, it stands there.
    private static void AllIn(string report, IEnumerable<string> texts)
    {
        foreach (var said in texts.Select(FlatReport.OneLine).CountBy(text => text))
            Assert.True(report.Split(said.Key).Length > said.Value, $"{said.Key}\nnot {said.Value} times in\n{report}");
    }

    private static IEnumerable<string> Texts(JsonElement of, string list) => of.GetProperty(list).EnumerateArray().Select(item => item.GetProperty("text").GetString()!);

    private static PlanStep? First(Plan plan) => plan.Steps is [var first, ..] ? first : null;
}
