namespace ProcedureRules.Testing;

/// <summary>Which mutants are run, and how.</summary>
public sealed record MutationOptions
{
    /// <summary>What the order of the mutants hangs on; the same seed gives the same mutants.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>How many mutants are run at most; null: all.</summary>
    public int? Limit { get; init; }

    /// <summary>Only rules with these words in their name or their pack's; null: all.</summary>
    public string? Filter { get; init; }

    /// <summary>A file that keeps what was found, so that a later run goes on from there while packs and scenarios are the same; null: none.</summary>
    public string? ResultFile { get; init; }

    /// <summary>Whether every mutant is planned at every moment that holds its rule, even where it is known what comes of it.</summary>
    internal bool IsThorough { get; init; }

    /// <summary>Told how many of how many mutants are done; from any thread.</summary>
    public Action<int, int>? Progress { get; init; }
}
