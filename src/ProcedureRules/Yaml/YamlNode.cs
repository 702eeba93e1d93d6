using ProcedureRules.Diagnostics;

namespace ProcedureRules.Yaml;

/// <summary>A value of a YAML file and its place; immutable.</summary>
internal abstract class YamlNode(SourceSpan span)
{
    /// <summary>Where the value stands in its file.</summary>
    public SourceSpan Span { get; } = span;

    /// <summary>What the value is, as messages say it: <c>a text</c>, <c>a list</c>.</summary>
    public abstract string Kind { get; }
}
