namespace ProcedureRules.Reports;

/// <summary>How a line of a report wants to be read; a host may colour by it, the words never depend on it.</summary>
public enum Tone
{
    /// <summary>Ordinary text.</summary>
    Plain,

    /// <summary>A heading.</summary>
    Heading,

    /// <summary>A step's instruction.</summary>
    Step,

    /// <summary>Reasons and other small print.</summary>
    Quiet,

    /// <summary>Something to answer or to measure.</summary>
    Question,

    /// <summary>A hazard: danger or warning.</summary>
    Hazard,

    /// <summary>A caution or a notice.</summary>
    Care,
}
