namespace ProcedureRules.Plans;

/// <summary>Bounds of planning, so that it ends on any input.</summary>
public sealed record PlannerOptions
{
    /// <summary>The usual bounds.</summary>
    public static PlannerOptions Default { get; } = new();

    /// <summary>How many hypotheses (an option supposed taken) are tried before the rest is decided option by option.</summary>
    public int MostHypotheses { get; init; } = 4000;

    /// <summary>How many complete sets of choices are tried for one that can be put in order.</summary>
    public int MostDecisions { get; init; } = 16;

    /// <summary>How many moments the search for an order may open.</summary>
    public int MostMoments { get; init; } = 3000;

    /// <summary>
    /// How many moments, for each step that may occur, the search may open while it also looks for the best time to find things out; past
    /// it, what could not be found out on the way is asked instead.
    /// </summary>
    public int MostMomentsWithChecks { get; init; } = 6;

    /// <summary>How often one step may occur in a plan.</summary>
    public int MostRepeats { get; init; } = 6;

    /// <summary>Whether it is left unsaid which question divides steps that have no order together: looking for it takes several plans.</summary>
    internal bool IsBrief { get; init; }
}
