namespace ProcedureRules.Scheduling;

/// <summary>What a step looks at and what it changes, each by a number. Two steps can change places unless one changes what the other looks at or changes.</summary>
internal sealed class Footprint
{
    /// <summary>What it looks at.</summary>
    public HashSet<int> Reads { get; } = [];

    /// <summary>What it changes.</summary>
    public HashSet<int> Writes { get; } = [];
}
