namespace ProcedureRules.Yaml;

/// <summary>How a text is written in YAML.</summary>
internal enum YamlStyle
{
    /// <summary>Without quotes.</summary>
    Plain,

    /// <summary>In single quotes.</summary>
    SingleQuoted,

    /// <summary>In double quotes, with escapes.</summary>
    DoubleQuoted,

    /// <summary>A block after <c>|</c>, which keeps its line breaks.</summary>
    Literal,

    /// <summary>A block after <c>&gt;</c>, whose line breaks become spaces.</summary>
    Folded,
}
