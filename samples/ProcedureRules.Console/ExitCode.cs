namespace ProcedureRules.ConsoleHost;

/// <summary>What the host's exit codes mean.</summary>
internal static class ExitCode
{
    /// <summary>A plan, or what was asked for, was printed.</summary>
    public const int Done = 0;

    /// <summary>The host could not run: an unknown option, a file that cannot be read.</summary>
    public const int CouldNotRun = 1;

    /// <summary>Packs, sheet, work order or statements have mistakes.</summary>
    public const int Mistakes = 2;

    /// <summary>There is no valid plan.</summary>
    public const int NoPlan = 3;
}
