namespace ProcedureRules.Testing.Comparing;

/// <summary>How far two pieces of a pack are apart.</summary>
internal enum Deviation
{
    /// <summary>They say the same; comments and layout say nothing.</summary>
    None,

    /// <summary>Only words for people differ.</summary>
    Words,

    /// <summary>They mean something else.</summary>
    Meaning,
}
