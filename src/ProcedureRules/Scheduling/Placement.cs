namespace ProcedureRules.Scheduling;

/// <summary>Where each piece of work lies, and how good that is.</summary>
/// <param name="Starts">When each starts.</param>
/// <param name="Ends">When each ends.</param>
/// <param name="Broken">How many bounds on waits are not kept.</param>
/// <param name="Finish">When the last ends.</param>
internal sealed record Placement(long[] Starts, long[] Ends, int Broken, long Finish)
{
    /// <summary>Whether this one is better than another: fewer broken bounds, then an earlier finish.</summary>
    public bool Beats(Placement? other) => other is null || Broken < other.Broken || (Broken == other.Broken && Finish < other.Finish);
}
