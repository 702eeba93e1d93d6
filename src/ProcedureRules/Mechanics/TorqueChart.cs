using ProcedureRules.Quantities;

namespace ProcedureRules.Mechanics;

/// <summary>What a general torque chart says of a bolt: a measure for a stated figure, never the figure of a joint.</summary>
public sealed class TorqueChart
{
    private TorqueChart(BoltGrade grade, BoltThread thread)
    {
        Grade = grade;
        Thread = thread;
        StressArea = Fastening.StressArea(thread.IsMetric, thread.Diameter, thread.Pitch);
        ProofLoad = Fastening.ProofLoad(grade, thread.Diameter, thread.Pitch);
    }

    /// <summary>The grade.</summary>
    public BoltGrade Grade { get; }

    /// <summary>The thread.</summary>
    public BoltThread Thread { get; }

    /// <summary>The area on which the bolt bears its pull.</summary>
    public Quantity StressArea { get; }

    /// <summary>The pull it bears without staying longer.</summary>
    public Quantity ProofLoad { get; }

    /// <summary>The pull that the chart tightens it to.</summary>
    public Quantity Preload => Fastening.ChartShare * ProofLoad;

    /// <summary>The chart of a bolt.</summary>
    /// <param name="grade">The grade.</param>
    /// <param name="thread">The thread.</param>
    /// <param name="mistake">Why there is none.</param>
    /// <returns>The chart, or null.</returns>
    public static TorqueChart? Of(BoltGrade grade, BoltThread thread, out string mistake)
    {
        ArgumentNullException.ThrowIfNull(grade);
        ArgumentNullException.ThrowIfNull(thread);
        mistake = "";
        if (grade.IsMetric != thread.IsMetric)
        {
            mistake = grade.IsMetric
                ? $"{grade.Text} is for metric bolts, {thread.Designation} is an inch thread"
                : $"{grade.Text} is for inch bolts, {thread.Designation} is a metric thread";
            return null;
        }

        var chart = new TorqueChart(grade, thread);
        if (chart.ProofLoad.IsBounded) return chart;
        var (from, to) = (grade.From.ToDisplay(System(grade)), grade.Ranges[^1].UpTo.ToDisplay(System(grade)));
        mistake = $"{grade.Standard} gives {grade.Text} from {from} to {to}, not {thread.Designation}";
        return null;
    }

    /// <summary>The torque for a nut factor.</summary>
    public Quantity Torque(Quantity nutFactor) => Fastening.ChartTorque(Grade, Thread.Diameter, Thread.Pitch, nutFactor);

    private static UnitSystem System(BoltGrade grade) => grade.IsMetric ? UnitSystem.Si : UnitSystem.Us;
}
