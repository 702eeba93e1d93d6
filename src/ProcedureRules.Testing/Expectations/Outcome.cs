using ProcedureRules.Beliefs;
using ProcedureRules.Plans;
using ProcedureRules.Scheduling;

namespace ProcedureRules.Testing.Expectations;

/// <summary>What a scenario came to at one turn.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Beliefs">What is believed before any way was chosen.</param>
internal sealed record Outcome(Plan Plan, BeliefState Beliefs)
{
    private (Workday Day, Schedule Schedule)? _last;

    /// <summary>The plan in time, in the shop of the scenario.</summary>
    public Schedule In(Workday day)
    {
        if (_last is { } last && ReferenceEquals(last.Day, day)) return last.Schedule;
        var schedule = Scheduler.Schedule(Plan, day.Shop, day.Start);
        _last = (day, schedule);
        return schedule;
    }
}
