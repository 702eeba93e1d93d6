namespace ProcedureRules.Yaml;

/// <summary>A key of a mapping and its value.</summary>
internal sealed record YamlEntry(YamlScalar Key, YamlNode Value)
{
    /// <summary>The key's text.</summary>
    public string Name => Key.Text;
}
