namespace ProcedureRules.Scheduling;

/// <summary>
/// The critical path method on the order alone: the earliest and latest starts of pieces of work as if there were hands and room for all,
/// and no closing time.
/// </summary>
internal sealed class CriticalPath
{
    private CriticalPath(long[] earliest, long[] latest, long length) => (Earliest, Latest, Length) = (earliest, latest, length);

    /// <summary>The earliest start of each.</summary>
    public long[] Earliest { get; }

    /// <summary>The latest start of each that does not put off the end.</summary>
    public long[] Latest { get; }

    /// <summary>From the first start to the last end.</summary>
    public long Length { get; }

    /// <summary>How far a piece can be put off without putting off the end.</summary>
    public long Float(int piece) => Latest[piece] - Earliest[piece];

    /// <summary>Passes forwards and backwards over a load.</summary>
    public static CriticalPath Of(WorkLoad load)
    {
        var (earliest, latest) = (new long[load.Count], new long[load.Count]);
        var length = 0L;
        for (var i = 0; i < load.Count; i++)
        {
            earliest[i] = load.Releases[i];
            foreach (var lag in load.Before[i]) earliest[i] = Math.Max(earliest[i], earliest[lag.Other] + load.Lengths[lag.Other] + lag.Seconds);
            length = Math.Max(length, earliest[i] + load.Lengths[i]);
        }
        for (var i = 0; i < load.Count; i++) latest[i] = length - load.Lengths[i];
        for (var i = load.Count - 1; i >= 0; i--)
            foreach (var lag in load.Before[i])
                latest[lag.Other] = Math.Min(latest[lag.Other], latest[i] - lag.Seconds - load.Lengths[lag.Other]);
        return new CriticalPath(earliest, latest, length);
    }
}
