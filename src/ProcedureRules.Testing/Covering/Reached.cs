namespace ProcedureRules.Testing.Covering;

/// <summary>How far the cases reach something; the better it is, the greater.</summary>
internal enum Reached
{
    /// <summary>No case reaches it.</summary>
    Never,

    /// <summary>Cases reach it, but show only a side of it.</summary>
    Partly,

    /// <summary>Cases reach all of it.</summary>
    Fully,
}
