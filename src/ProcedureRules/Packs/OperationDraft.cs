using ProcedureRules.Yaml;

namespace ProcedureRules.Packs;

/// <summary>An operation as written, before it is known what it undoes.</summary>
internal sealed class OperationDraft(PackDocument pack, YamlScalar name, YamlMapping map, Kind? on)
{
    public PackDocument Pack { get; } = pack;

    public YamlScalar Name { get; } = name;

    public YamlMapping Map { get; } = map;

    /// <summary>The kind it works on; null where that could not be read.</summary>
    public Kind? On { get; } = on;

    /// <summary>The operation it undoes.</summary>
    public OperationDraft? Step { get; set; }

    /// <summary>The operation that undoes it.</summary>
    public OperationDraft? Undo { get; set; }

    /// <summary>The operation made of it.</summary>
    public Operation? Made { get; set; }
}
