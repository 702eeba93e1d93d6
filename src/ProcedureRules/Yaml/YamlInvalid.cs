using ProcedureRules.Diagnostics;

namespace ProcedureRules.Yaml;

/// <summary>Stands where a value could not be read and was reported; whoever meets it stays quiet.</summary>
internal sealed class YamlInvalid(SourceSpan span) : YamlNode(span)
{
    /// <inheritdoc/>
    public override string Kind => "an unreadable value";
}
