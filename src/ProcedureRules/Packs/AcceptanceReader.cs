using ProcedureRules.Yaml;

namespace ProcedureRules.Packs;

/// <summary>Reads which findings of the lint the declarations of a pack accept.</summary>
internal static class AcceptanceReader
{
    private static readonly string[] Named = ["kinds", "aspects", "facts", "relations", "operations", "causes", "jobs"];

    /// <summary>Those of a pack, in its order.</summary>
    public static IEnumerable<Acceptance> Read(PackDocument pack) => Named.SelectMany(pack.Definitions)
        .Concat(Titled(pack, "rules", "rule"))
        .Concat(Titled(pack, "tables", "table"))
        .SelectMany(declared => Of(declared.Name, declared.Map));

    private static IEnumerable<(YamlScalar Name, YamlMapping Map)> Titled(PackDocument pack, string list, string key) =>
        from map in pack.Root.Maps(list)
        where map.Scalar(key) is not null
        select (map.Scalar(key)!, map);

    private static IEnumerable<Acceptance> Of(YamlScalar name, YamlMapping map) =>
        from entry in map.Map(Forms.AcceptKey)?.Entries ?? []
        select new Acceptance(name.Span, entry.Name, entry.Key.Span, (entry.Value as YamlScalar)?.Text ?? "");
}
