using ProcedureRules.Diagnostics;
using ProcedureRules.Logic;
using ProcedureRules.Yaml;

namespace ProcedureRules.Packs;

/// <summary>Reads the relations and causes of a pack.</summary>
internal static class RelationReader
{
    /// <summary>Reads them into the draft.</summary>
    public static void Read(PackDocument pack, PackDraft draft)
    {
        foreach (var (name, map) in pack.Definitions("relations"))
            draft.Relations.Add(name.Text, ReadRelation(name, map, pack, draft), pack.Name, name.Span, draft.Bag);
        foreach (var (name, map) in pack.Definitions("causes"))
            draft.Causes.Add(name.Text, ReadCause(name, map, pack, draft), pack.Name, name.Span, draft.Bag);
    }

    private static Relation? ReadRelation(YamlScalar name, YamlMapping map, PackDocument pack, PackDraft draft)
    {
        var names = map.Scalars("of").ToList();
        var kinds = names.Select(kind => pack.Scope.Find(draft.Kinds, kind)).ToList();
        if (names.Count > 2)
            draft.Bag.Add(Messages.RelationNotOfTwo(map.Value("of")!.Span, names.Count));
        if (kinds is not [{ } first, { } second])
            return null;
        return new Relation
        {
            Name = name.Text,
            First = first,
            Second = second,
            Text = map.Text("text") ?? name.Text,
            IfSilent = map.Text("if_silent") == "unknown" ? Truth.Unknown : Truth.No,
            HoldsWhile = Snippets.In(map, "holds_while", draft.Bag),
            How = map.Text("how"),
            Pack = pack.Name,
            Span = name.Span,
        };
    }

    private static Cause? ReadCause(YamlScalar name, YamlMapping map, PackDocument pack, PackDraft draft) =>
        map.Scalar("on") is { } on && pack.Scope.Find(draft.Kinds, on) is { } kind
            ? new Cause { Name = name.Text, On = kind, Text = Snippets.At(map, "text") ?? new Snippet(name.Text), Pack = pack.Name, Span = name.Span }
            : null;
}
