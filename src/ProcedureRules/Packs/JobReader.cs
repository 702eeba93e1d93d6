using ProcedureRules.Diagnostics;
using ProcedureRules.Yaml;

namespace ProcedureRules.Packs;

/// <summary>Reads the jobs of a pack.</summary>
internal static class JobReader
{
    /// <summary>Reads them into the draft.</summary>
    public static void Read(PackDocument pack, PackDraft draft)
    {
        foreach (var (name, map) in pack.Definitions("jobs"))
            draft.Jobs.Add(name.Text, ReadOne(name, map, pack, draft), pack.Name, name.Span, draft.Bag);
    }

    private static JobDefinition? ReadOne(YamlScalar name, YamlMapping map, PackDocument pack, PackDraft draft)
    {
        var on = map.Scalar("on") is { } kind ? pack.Scope.Find(draft.Kinds, kind) : null;
        if (on is null && map.Has("on"))
            return null;
        return new JobDefinition
        {
            Name = name.Text,
            Text = Snippets.At(map, "text") ?? new Snippet(name.Text),
            On = on,
            Ends = Snippets.In(map, "ends", draft.Bag),
            Waypoints = Snippets.In(map, "pass", draft.Bag),
            Work = Snippets.In(map, "do", draft.Bag),
            Know = Snippets.In(map, "know", draft.Bag),
            Variants = [.. map.Maps("variants").Select(variant => ReadVariant(variant, draft.Bag)).OfType<JobVariant>()],
            Pack = pack.Name,
            Span = name.Span,
        };
    }

    private static JobVariant? ReadVariant(YamlMapping map, DiagnosticBag bag) =>
        Snippets.At(map, "if") is { } condition
            ? new JobVariant(condition, map.Text("text") ?? condition.Text, Snippets.In(map, "ends", bag), Snippets.In(map, "do", bag))
            : null;
}
