using ProcedureRules.Facts;
using ProcedureRules.Packs;

namespace ProcedureRules.Testing.Comparing;

/// <summary>Finds the change of the packs that a piece of an explanation speaks of.</summary>
internal sealed class ChangeIndex
{
    private readonly Dictionary<(string Sort, string Name), PackChange> _changes = [];

    public ChangeIndex(IEnumerable<PackChange> changes)
    {
        foreach (var change in changes)
        {
            _changes.TryAdd((change.Sort, change.Name), change);
            if (change.OldName is { } old) _changes.TryAdd((change.Sort, old), change);
        }
    }

    /// <summary>The change of a rule by its title, or of what a rule was made from.</summary>
    public PackChange? OfRule(string title) => Made(title, "operation ") ?? Made(title, "job ") ?? Find("rule", title) ?? OfTable(title);

    /// <summary>The change of an operation.</summary>
    public PackChange? OfOperation(string name) => Find("operation", name);

    /// <summary>The change of a fact.</summary>
    public PackChange? OfFact(FactDefinition fact) => Find("fact", fact.ToString());

    /// <summary>The change of what an explanation names by an id: a step, a relation, a fact.</summary>
    public PackChange? OfId(string id, Situation situation)
    {
        var call = id.IndexOf('(', StringComparison.Ordinal);
        if (call > 0) return Find("operation", id[..call]) ?? Find("relation", id[..call]);
        var dot = id.IndexOf('.', StringComparison.Ordinal);
        if (dot < 0 || situation.Parts.FirstOrDefault(part => part.Name == id[..dot]) is not { } part) return null;
        return situation.Vocabulary.FactOf(part.Kind, id[(dot + 1)..]) is { } fact ? OfFact(fact) : null;
    }

    /// <summary>Every archetype that has changed.</summary>
    public IEnumerable<PackChange> Archetypes => _changes.Values.Where(change => change.Sort == "archetype");

    private PackChange? Made(string title, string lead) =>
        title.StartsWith(lead, StringComparison.Ordinal) ? Find(lead.Trim(), title[lead.Length..].Split(',')[0]) : null;

    private PackChange? OfTable(string title) => title.LastIndexOf(", row ", StringComparison.Ordinal) is > 0 and var at ? Find("table", title[..at]) : null;

    private PackChange? Find(string sort, string name) => _changes.GetValueOrDefault((sort, name));
}
