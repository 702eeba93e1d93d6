using ProcedureRules.Yaml;

namespace ProcedureRules.Packs;

/// <summary>A pack as YAML, with its head read.</summary>
internal sealed record PackDocument(PackHeader Header, YamlMapping Root, Scope Scope)
{
    /// <summary>The pack's name.</summary>
    public string Name => Header.Name;

    /// <summary>The named definitions under a key whose values are mappings.</summary>
    public IEnumerable<(YamlScalar Name, YamlMapping Map)> Definitions(string key) =>
        from entry in Root.Map(key)?.Entries ?? []
        where entry.Value is YamlMapping
        select (entry.Key, (YamlMapping)entry.Value);
}
