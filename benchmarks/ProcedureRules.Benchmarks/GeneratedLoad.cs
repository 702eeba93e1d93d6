using ProcedureRules.Scheduling;

namespace ProcedureRules.Benchmarks;

/// <summary>A made-up job: steps of 5 to 90 minutes, each after one or two of the dozen before it, some for two people, two places with little room, some waits.</summary>
internal static class GeneratedLoad
{
    private const int Seed = 11;
    private const long Minute = 60;

    public static WorkLoad Of(int steps, int technicians)
    {
        var random = new Random(Seed);
        return new WorkLoad
        {
            Lengths = [.. Many(() => Minute * random.Next(5, 90))],
            Hands = [.. Many(() => random.Next(8) == 0 ? 2 : 1)],
            Places = [.. Many(() => random.Next(3) - 1)],
            Before = [.. Enumerable.Range(0, steps).Select(step => Earlier(step).Select(other => new Lag(other, Wait())).ToArray())],
            Within = [.. Many(Array.Empty<Lag>)],
            Releases = new long[steps],
            Deadlines = [.. Many(() => long.MaxValue)],
            Rooms = [1, 2],
            Technicians = technicians,
        };

        IEnumerable<T> Many<T>(Func<T> make) => Enumerable.Range(0, steps).Select(_ => make());
        IEnumerable<int> Earlier(int step) => Enumerable.Range(Math.Max(0, step - 12), Math.Min(12, step)).Where(_ => random.Next(8) == 0);
        long Wait() => random.Next(8) == 0 ? Minute * random.Next(10, 600) : 0;
    }
}
