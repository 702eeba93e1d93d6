using ProcedureRules.Quantities;
using ProcedureRules.Reports;
using Xunit;

namespace ProcedureRules.Tests.Engine;

/// <summary>Several jobs on one vehicle: one plan, teardown shared.</summary>
public class JobSharingTests
{
    [Theory]
    [InlineData("replace_oil_pan, replace_starter")]
    [InlineData("replace_fan_clutch, replace_crank_pulley")]
    [InlineData("replace_battery, replace_starter, change_oil_and_filter")]
    public void Sharing_OfJobsThatMeet_IsNeverDearerThanApart(string jobs)
    {
        var (session, plan) = Open(jobs);
        var sharing = session.Sharing(plan, TestContext.Current.CancellationToken);
        Assert.NotNull(sharing);
        Assert.Equal(jobs.Split(", "), sharing.Alone.Select(job => job.Job.Job.Name));
        Assert.True(sharing.Together.Low <= sharing.Apart.Low, $"{sharing.Together} against {sharing.Apart}");
        Assert.True(sharing.Together.High <= sharing.Apart.High, $"{sharing.Together} against {sharing.Apart}");
        Assert.True(sharing.Saving.Low > 0);
    }

    [Fact]
    public void Sharing_OfOneJob_IsNothing()
    {
        var session = Shipped.Open("oil-pan");
        Assert.Null(session.Sharing(Shipped.PlanOf(session), TestContext.Current.CancellationToken));
    }

    // A plan that stops takes no labour, and that was told as a saving of all of it.
    [Fact]
    public void Sharing_OfJobsThatStopTogether_IsNothing()
    {
        var session = OnePack.Open(
            """
            pack: van
            version: 1.0.0
            about: A bench on which the tank stands while the lamp is renewed.
            places: [ bench ]
            kinds: {vehicle: {}, tank: {}, lamp: {}}
            aspects: {tank.unit: {states: [old, new], normal: old, mark: yes}, lamp.unit: {states: [old, new], normal: old, mark: yes}}
            operations:
              renew_tank: {on: tank, text: "Renew the {it}", change: {unit: old -> new}, place: bench, time: 5 min}
              renew_lamp: {on: lamp, text: "Renew the {it}", change: {unit: old -> new}, place: bench, time: 5 min}
            jobs:
              replace_tank: {on: tank, text: "Replace the {it}", ends: [ it.unit is new ]}
              replace_lamp: {on: lamp, text: "Replace the {it}", ends: [ it.unit is new ]}
            rules:
              - {rule: one bench, for: {t: step, l: step}, when: [ t does renew_tank, l does renew_lamp ], then: [ {forbid: l} ], because: There is one bench., basis: none}
            """,
            "tank: tank, lamp: lamp", "replace_tank, replace_lamp");
        var plan = Shipped.PlanOf(session);
        Assert.True(plan.IsStopped);
        Assert.Null(session.Sharing(plan, TestContext.Current.CancellationToken));
    }

    [Fact]
    public void Report_OfSeveralJobs_TellsWhatTheySave()
    {
        var (session, plan) = Open("replace_oil_pan, replace_starter");
        var sharing = session.Sharing(plan, TestContext.Current.CancellationToken);
        var text = string.Join('\n', PlanText.Lines(plan, UnitSystem.Us, 80, sharing).Select(line => line.Text));
        Assert.Contains("DONE TOGETHER", text, StringComparison.Ordinal);
        Assert.Contains("saves about", text, StringComparison.Ordinal);
        Assert.Contains("\"together\"", PlanJson.Write(plan, UnitSystem.Us, sharing), StringComparison.Ordinal);
    }

    private static (ProcedureSession Session, ProcedureRules.Plans.Plan Plan) Open(string jobs)
    {
        using var folder = new TemporaryFolder();
        folder.Write("van.yaml", "vehicle: Old van\narchetype: rear_drive_crossmember\nfacts: {oil_pan.condition: perforated, oil_pan.drop_needed: 5 in, oil_pan.drop_available: 2.4 in}\n");
        var session = Shipped.Engine.Open(folder.Write("job.yaml", $"work_order: Several\nvehicle: van.yaml\njobs: [ {jobs} ]\n")).Session!;
        return (session, Shipped.PlanOf(session));
    }
}
