using ProcedureRules.Diagnostics;
using ProcedureRules.Yaml;

namespace ProcedureRules.Packs;

/// <summary>Which names a pack may use, and the look-up that says what is wrong with a name.</summary>
/// <param name="Pack">The pack.</param>
/// <param name="Open">It and the packs it uses.</param>
/// <param name="HasGaps">
/// Whether a pack it uses is missing or unreadable: then a name that is not found says nothing about its spelling.
/// </param>
/// <param name="Bag">Takes what is wrong.</param>
internal sealed record Scope(string Pack, IReadOnlySet<string> Open, bool HasGaps, DiagnosticBag Bag)
{
    /// <summary>Whether what a pack defines may be used here; what no pack defines always may.</summary>
    public bool IsOpen(string pack) => pack.Length == 0 || Open.Contains(pack);

    /// <summary>What a name stands for, or null after a complaint (or where its definition has been complained about).</summary>
    public T? Find<T>(NameTable<T> table, YamlScalar name)
        where T : class => Find(table, name.Text, name.Span);

    /// <summary>What a name stands for, or null after a complaint (or where its definition has been complained about).</summary>
    public T? Find<T>(NameTable<T> table, string name, SourceSpan span)
        where T : class
    {
        if (table.Find(name) is not { } definition)
        {
            if (!HasGaps)
                Bag.Add(Messages.UnknownName(span, table.What, name, table.Definitions.Where(known => IsOpen(known.Value.Pack)).Select(known => known.Key)));
            return null;
        }

        if (!HasGaps && !IsOpen(definition.Pack))
            Bag.Add(Messages.PackNotUsed(span, table.What, name, definition.Pack, definition.Span));
        return definition.Item;
    }

    /// <summary>The aspect or fact of a kind, its own or inherited, or null after a complaint.</summary>
    public T? FindOf<T>(NameTable<T> table, Kind kind, string name, SourceSpan span)
        where T : class
    {
        foreach (var owner in kind.Lineage())
        {
            if (table.Find($"{owner.Name}.{name}") is not null)
                return Find(table, $"{owner.Name}.{name}", span);
        }

        if (!HasGaps)
            Bag.Add(Messages.UnknownNameOf(span, table.What, name, kind.Name, NamesOf(table, kind)));
        return null;
    }

    private static IEnumerable<string> NamesOf<T>(NameTable<T> table, Kind kind)
        where T : class =>
        from owner in kind.Lineage()
        from known in table.Definitions
        where known.Key.StartsWith(owner.Name + ".", StringComparison.Ordinal)
        select known.Key[(owner.Name.Length + 1)..];
}
