using ProcedureRules.Quantities;
using ProcedureRules.Scheduling;

namespace ProcedureRules.Testing.Expectations;

/// <summary>A time that is not known to the minute, in seconds.</summary>
internal readonly record struct TimeSpread(double Low, double Likely, double High)
{
    // Seconds that rounding makes are none.
    private const double Grain = 0.5;

    /// <summary>Compares it, or one estimate of it, with bounds.</summary>
    public Judgement Judge(Quantity due, ScheduleCase? only, string beside, Func<IReadOnlyList<string>>? explain = null)
    {
        var (low, high) = only switch
        {
            ScheduleCase.Low => (Low, Low),
            ScheduleCase.Likely => (Likely, Likely),
            ScheduleCase.High => (High, High),
            _ => (Low, High),
        };
        var (all, one) = (this, only);
        return Judgement.Of(due.Low - Grain <= low && high <= due.High + Grain, () => all.Say(one) + beside, explain);
    }

    private string Say(ScheduleCase? only) => only is null ? $"{Say(Low)}..{Say(High)}" : $"low {Say(Low)}, likely {Say(Likely)}, high {Say(High)}";

    private static string Say(double seconds) => Quantity.Point(seconds, Dimension.Duration).ToDisplay(UnitSystem.Us);
}
