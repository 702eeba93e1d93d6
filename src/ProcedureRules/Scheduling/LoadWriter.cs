using ProcedureRules.Plans;
using ProcedureRules.Quantities;

namespace ProcedureRules.Scheduling;

/// <summary>Puts a plan into the plain numbers of a load.</summary>
internal sealed class LoadWriter
{
    // No job waits or works this long; it keeps sums of unbounded figures within reckoning.
    private const double MostSeconds = 5e8;
    private readonly Plan _plan;
    private readonly Workshop _shop;
    private readonly IReadOnlyList<IReadOnlyList<int>> _order;
    private readonly List<string> _places;
    private readonly Dictionary<string, int> _indices;

    public LoadWriter(Plan plan, Workshop shop)
    {
        (_plan, _shop, _order) = (plan, shop, BindingOrder.Of(plan));
        _places = [.. shop.Places.Keys.Order(StringComparer.Ordinal)];
        _indices = plan.Steps.Select((step, index) => (step.Id, index)).ToDictionary(entry => entry.Id, entry => entry.index);
    }

    /// <summary>The load in some case.</summary>
    public WorkLoad Write(ScheduleCase given)
    {
        var steps = _plan.Steps;
        return new WorkLoad
        {
            Lengths = [.. steps.Select(step => Length(step, given))],
            Hands = [.. steps.Select(Hands)],
            Places = [.. steps.Select(step => _places.IndexOf(step.Step.Operation.Place))],
            Before = [.. steps.Select((step, index) => Before(step, index, given))],
            Within = [.. steps.Select(step => Within(step, given))],
            Releases = [.. steps.Select(step => Release(step, given))],
            Deadlines = [.. steps.Select(step => Deadline(step, given))],
            Rooms = [.. _places.Select(place => Math.Max(1, _shop.Places[place]))],
            Technicians = _shop.Technicians,
        };
    }

    /// <summary>How long a step takes in some case, in seconds.</summary>
    public static long Length(PlanStep step, ScheduleCase given) => given switch
    {
        ScheduleCase.Low => step.Provisional.Count > 0 ? 0 : Seconds(step.Time.Low),
        ScheduleCase.High => Seconds(step.Time.High),
        _ => Seconds((step.Time.Low / 2) + (step.Time.High / 2)),
    };

    /// <summary>The labour of a step in some case, in seconds: the time of all people that it takes.</summary>
    public static long Labour(PlanStep step, ScheduleCase given) => Length(step, given) * step.Step.Operation.Hands;

    /// <summary>The latest start that a wait allows a step; null where it has no most. <paramref name="from"/> is the end of the step it counts from.</summary>
    public static long? LatestStart(PlanWait wait, long from) =>
        wait.Most is null || (wait.AfterStep is null && wait.Age is null) ? null : from + Most(wait) - (wait.Age is { } age ? Seconds(age.High) : 0);

    // Where a hazard is met that others keep away from, all hands rest.
    private int Hands(PlanStep step)
    {
        var operation = step.Step.Operation;
        var isAlone = operation.Energies.Any(energy => _shop.Alone is null || _shop.Alone.Contains(energy));
        return isAlone ? Math.Max(operation.Hands, Workshop.MostTechnicians) : operation.Hands;
    }

    private Lag[] Before(PlanStep step, int index, ScheduleCase given)
    {
        var lags = _order[index].ToDictionary(other => other, _ => 0L);
        foreach (var wait in step.Waits)
            if (wait is { AfterStep: { } id, Least: { } least })
                lags[_indices[id]] = Math.Max(lags.GetValueOrDefault(_indices[id]), IsLeftOut(step, _plan.Steps[_indices[id]], given) ? 0 : Least(least, given));
        return [.. lags.OrderBy(lag => lag.Key).Select(lag => new Lag(lag.Key, lag.Value))];
    }

    private Lag[] Within(PlanStep step, ScheduleCase given) =>
    [
        .. from wait in step.Waits
           where wait is { AfterStep: not null, Most: not null } && !IsLeftOut(step, _plan.Steps[_indices[wait.AfterStep!]], given)
           select new Lag(_indices[wait.AfterStep!], Most(wait)),
    ];

    private static bool IsLeftOut(PlanStep step, PlanStep from, ScheduleCase given) =>
        given == ScheduleCase.Low && (step.Provisional.Count > 0 || from.Provisional.Count > 0);

    private static long Release(PlanStep step, ScheduleCase given)
    {
        if (IsLeftOut(step, step, given)) return 0;
        var release = 0L;
        foreach (var wait in step.Waits)
            if (wait is { AfterStep: null, Least: { } least, Age: { } age })
                release = Math.Max(release, Least(least, given) - Seconds(given == ScheduleCase.Low ? age.High : age.Low));
        return release;
    }

    private static long Deadline(PlanStep step, ScheduleCase given)
    {
        if (IsLeftOut(step, step, given)) return long.MaxValue;
        return step.Waits.Where(wait => wait.AfterStep is null).Select(wait => LatestStart(wait, 0) ?? long.MaxValue).DefaultIfEmpty(long.MaxValue).Min();
    }

    private static long Least(Quantity least, ScheduleCase given) =>
        Seconds(given == ScheduleCase.Low || double.IsInfinity(least.High) ? least.Low : least.High);

    // The shorter end is sure to be kept; but never shorter than the least of the same wait.
    private static long Most(PlanWait wait)
    {
        var most = Seconds(wait.Most!.Value.Low);
        return wait.Least is { } least ? Math.Max(most, Least(least, ScheduleCase.Likely)) : most;
    }

    private static long Seconds(double seconds) => (long)Math.Round(Math.Clamp(seconds, 0, MostSeconds));
}
