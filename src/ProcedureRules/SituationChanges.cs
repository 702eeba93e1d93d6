using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Logic;

namespace ProcedureRules;

/// <summary>What differs between two situations of one vehicle, as suppositions for the belief network.</summary>
internal static class SituationChanges
{
    /// <summary>The changes, or null where states, done work, jobs or doubts differ, which the network was not built for.</summary>
    public static IReadOnlyList<Supposition>? Between(Situation before, Situation after)
    {
        if (!ReferenceEquals(before.States, after.States) && !SameStates(before, after)) return null;
        if (!ReferenceEquals(before.Doubts, after.Doubts) && !before.Doubts.SequenceEqual(after.Doubts)) return null;
        if (!ReferenceEquals(before.Done, after.Done) && !before.Done.SequenceEqual(after.Done)) return null;
        if (!before.Jobs.SequenceEqual(after.Jobs) || !before.Parts.SequenceEqual(after.Parts)) return null;

        var changes = new List<Supposition>();
        Differ(before.Observations, after.Observations, observation => observation.Fact,
            (key, now) => changes.Add(new Supposition.Observed(key, now)));
        Differ(before.PartStatements, after.PartStatements, statement => statement.Part,
            (part, now) => changes.Add(new Supposition.PartExists(part, Strongest(now.Select(statement => (statement.Source, statement.Exists)), part.Kind.IfSilent))));
        Differ(before.Relations, after.Relations, statement => (statement.Relation, statement.A, statement.B),
            (key, now) => changes.Add(new Supposition.RelationHolds(key.Relation, key.A, key.B,
                Strongest(now.Select(statement => (statement.Source, statement.Holds)), key.Relation.IfSilent))));
        return changes;
    }

    private static bool SameStates(Situation before, Situation after) =>
        before.States.Count == after.States.Count && before.States.All(state => after.States.TryGetValue(state.Key, out var now) && now == state.Value);

    private static void Differ<TItem, TKey>(
        IReadOnlyList<TItem> before, IReadOnlyList<TItem> after, Func<TItem, TKey> keyOf, Action<TKey, IReadOnlyList<TItem>> changed)
        where TKey : notnull
    {
        if (ReferenceEquals(before, after)) return;
        var old = before.ToLookup(keyOf);
        var now = after.ToLookup(keyOf);
        foreach (var key in old.Select(group => group.Key).Union(now.Select(group => group.Key)))
            if (!old[key].SequenceEqual(now[key])) changed(key, [.. now[key]]);
    }

    // Statements of the strongest source that contradict each other leave it unknown.
    private static Truth Strongest(IEnumerable<(Source Source, Truth Truth)> statements, Truth silence)
    {
        var said = statements.ToList();
        if (said.Count == 0) return silence;
        var best = said.Max(statement => statement.Source);
        var truths = said.Where(statement => statement.Source == best).Select(statement => statement.Truth).Distinct().ToList();
        return truths.Count == 1 ? truths[0] : Truth.Unknown;
    }
}
