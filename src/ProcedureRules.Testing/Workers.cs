namespace ProcedureRules.Testing;

/// <summary>How work is spread over the cores: left to itself, the pool takes more threads than there are cores for work that never waits, which costs memory and time.</summary>
internal static class Workers
{
    /// <summary>The options for work that can be stopped.</summary>
    public static ParallelOptions Options(CancellationToken cancellation) => new() { CancellationToken = cancellation, MaxDegreeOfParallelism = Environment.ProcessorCount };
}
