using ProcedureRules.Diagnostics;
using ProcedureRules.Yaml;

namespace ProcedureRules.Packs;

/// <summary>Reads the rules, laws and tables of a pack as they are written.</summary>
internal static class RuleReader
{
    /// <summary>Reads them into the draft; no two in all packs share a name.</summary>
    public static void Read(PackDocument pack, PackDraft draft, Dictionary<string, SourceSpan> first)
    {
        foreach (var map in pack.Root.Maps("rules"))
        {
            if (NameOf(map, "rule", first, draft.Bag) is { } name)
                draft.Rules.Add(ReadRule(name, map, pack, draft.Bag));
        }

        foreach (var map in pack.Root.Maps("laws"))
        {
            if (NameOf(map, "law", first, draft.Bag) is { } name)
                draft.Laws.Add(ReadRule(name, map, pack, draft.Bag));
        }

        foreach (var map in pack.Root.Maps("tables"))
        {
            if (NameOf(map, "table", first, draft.Bag) is { } name && ReadTable(name, map, pack, draft.Bag) is { } table)
                draft.Tables.Add(table);
        }
    }

    private static YamlScalar? NameOf(YamlMapping map, string key, Dictionary<string, SourceSpan> first, DiagnosticBag bag)
    {
        if (map.Scalar(key) is not { IsNothing: false } name)
            return null;
        if (first.TryAdd(name.Text, name.Span))
            return name;
        bag.Add(Messages.DefinedTwice(name.Span, key, name.Text, first[name.Text]));
        return null;
    }

    private static RuleDeclaration ReadRule(YamlScalar name, YamlMapping map, PackDocument pack, DiagnosticBag bag) => new()
    {
        Name = name.Text,
        Pack = pack.Name,
        Span = name.Span,
        Variables = Variables(map),
        When = Snippets.In(map, "when", bag),
        Then = ConclusionReader.Read(map, "then", bag),
        Because = Snippets.At(map, "because"),
        Basis = map.Text("basis") ?? "",
        IfUnknown = ConclusionReader.ReadIfUnknown(map),
    };

    private static TableDeclaration? ReadTable(YamlScalar name, YamlMapping map, PackDocument pack, DiagnosticBag bag)
    {
        var inputs = Snippets.In(map, "inputs", bag);
        var rows = new List<IReadOnlyList<Snippet>>();
        foreach (var row in map.List("rows").OfType<YamlSequence>())
        {
            if (row.Items.Count >= 2 && row.Items.Count != inputs.Count + 1)
                bag.Add(Messages.RowLength(row.Span, inputs.Count + 1, row.Items.Count));
            // A row that is wrong stays: without it the table would be said to have a gap, too.
            rows.Add([.. row.Items.OfType<YamlScalar>().Where(cell => !cell.IsNothing).Select(cell => new Snippet(cell))]);
        }

        return Snippets.At(map, "output") is not { } output ? null : new TableDeclaration
        {
            Name = name.Text,
            Pack = pack.Name,
            Span = name.Span,
            Variables = Variables(map),
            When = Snippets.In(map, "when", bag),
            Inputs = inputs,
            Output = output,
            Rows = rows,
            Because = Snippets.At(map, "because"),
            Basis = map.Text("basis") ?? "",
        };
    }

    private static List<(YamlScalar Name, Snippet Sort)> Variables(YamlMapping map) =>
        [.. from entry in map.Map("for")?.Entries ?? []
            where entry.Value is YamlScalar { IsNothing: false }
            select (entry.Key, new Snippet((YamlScalar)entry.Value))];
}
