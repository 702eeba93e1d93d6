using ProcedureRules.Yaml;

namespace ProcedureRules.Facts;

/// <summary>Reads which ways a work order fixes. Whether there are such choices and ways shows when the order is opened: only rules say which come up.</summary>
internal static class FixedWaysReader
{
    /// <summary>Reads them into the builder.</summary>
    public static void Read(SituationBuilder builder, SheetLayer layer)
    {
        foreach (var entry in layer.Root.Map("choose")?.Entries ?? [])
            if (entry.Value is YamlScalar { IsNothing: false } way) builder.Fix(new FixedWay(entry.Name, way.Text, entry.Key.Span, way.Span));
    }
}
