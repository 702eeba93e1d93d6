namespace ProcedureRules.Choosing;

/// <summary>
/// What the ways of one choice make sure, where it was looked at. It holds for everything built on that: there more is decided, and what was
/// sure stays so.
/// </summary>
/// <param name="Ways">The ways that may be gone, with the steps that each makes sure beyond those sure without it.</param>
internal sealed record ChoiceGain(IReadOnlyList<(int Way, IReadOnlyList<(int Step, long Least, long Most)> Steps)> Ways)
{
    /// <summary>Whether a way may be gone.</summary>
    public bool Has(int way) => Ways.Any(entry => entry.Way == way);

    /// <summary>What a way makes sure.</summary>
    public static IReadOnlyList<(int Step, long Least, long Most)> Between((long Least, long Most)[] without, (long Least, long Most)[] with) =>
        [.. Enumerable.Range(0, with.Length).Where(i => with[i].Least > without[i].Least || with[i].Most > without[i].Most).Select(i => (i, with[i].Least, with[i].Most))];

    /// <summary>
    /// What some choices add at least to what is sure: each its cheapest way, where a step that several of them may ask for counts for each only
    /// in part, so that it counts once.
    /// </summary>
    public static (long Twice, long Most) Least(IReadOnlyList<ChoiceGain> gains, (long Least, long Most)[] sure)
    {
        var sharers = new Dictionary<int, int>();
        foreach (var gain in gains)
            foreach (var step in gain.Ways.SelectMany(way => way.Steps.Select(entry => entry.Step)).Distinct())
                sharers[step] = sharers.GetValueOrDefault(step) + 1;
        long twice = 0, most = 0;
        foreach (var gain in gains)
        {
            if (gain.Ways.Count == 0) continue;
            twice += gain.Ways.Min(way => way.Steps.Sum(entry => (Over(entry.Least, sure[entry.Step].Least) + Over(entry.Most, sure[entry.Step].Most)) / sharers[entry.Step]));
            most += gain.Ways.Min(way => way.Steps.Sum(entry => Over(entry.Most, sure[entry.Step].Most) / sharers[entry.Step]));
        }

        return (twice, most);
    }

    private static long Over(long one, long other) => Math.Max(0, one - other);
}
