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
