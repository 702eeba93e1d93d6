namespace ProcedureRules.Language;

/// <summary>Signal words in the sense of ANSI Z535.6.</summary>
public enum Signal
{
    /// <summary>Practices not related to injury.</summary>
    Notice,

    /// <summary>A hazard that could end in minor or moderate injury.</summary>
    Caution,

    /// <summary>A hazard that could end in death or serious injury.</summary>
    Warning,

    /// <summary>A hazard that will end in death or serious injury.</summary>
    Danger,
}
