using ProcedureRules.Diagnostics;

namespace ProcedureRules.Yaml;

/// <summary>A list.</summary>
internal sealed class YamlSequence(SourceSpan span, IReadOnlyList<YamlNode> items) : YamlNode(span)
{
    /// <summary>The items in file order.</summary>
    public IReadOnlyList<YamlNode> Items { get; } = items;

    /// <inheritdoc/>
    public override string Kind => "a list";
}
