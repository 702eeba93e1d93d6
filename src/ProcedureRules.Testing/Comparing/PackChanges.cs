using ProcedureRules.Packs;
using ProcedureRules.Yaml;

namespace ProcedureRules.Testing.Comparing;

/// <summary>Finds what differs between two versions of packs.</summary>
internal static class PackChanges
{
    /// <summary>The changes in the order of the files after, then what is gone.</summary>
    public static IReadOnlyList<PackChange> Between(PackSet before, PackSet after)
    {
        var (old, now) = (PackItems.Of(before), PackItems.Of(after));
        var olds = old.GroupBy(item => item.Key).ToDictionary(group => group.Key, group => group.First());
        var nows = now.Select(item => item.Key).ToHashSet();
        var gone = old.Where(item => !nows.Contains(item.Key)).ToList();
        var changes = new List<PackChange>();
        foreach (var item in now)
        {
            if (olds.TryGetValue(item.Key, out var was)) changes.AddRange(Changed(was, item));
            else changes.Add(Renamed(item, gone) ?? new PackChange(item.Pack, item.Sort, item.Name, PackChangeKind.Added, [], VersionPart.Minor, item.Span));
        }

        changes.AddRange(gone.Select(item =>
            new PackChange(item.Pack, item.Sort, item.Name, PackChangeKind.Removed, [], item.IsVocabulary ? VersionPart.Major : VersionPart.Minor, item.Span)));
        return changes;
    }

    private static IEnumerable<PackChange> Changed(PackItem before, PackItem after)
    {
        var keys = before.Node is YamlMapping a && after.Node is YamlMapping b
            ? NodeComparer.Keys(a, b, after.Shape).ToList()
            : NodeComparer.Compare(before.Node, after.Node, after.Shape) is var whole and not Deviation.None ? [("", whole)] : [];
        if (keys.Count == 0) yield break;
        var due = Narrowing.IsNarrower(before, after) ? VersionPart.Major : keys.Max(key => key.Deviation) == Deviation.Words ? VersionPart.Patch : VersionPart.Minor;
        yield return new PackChange(after.Pack, after.Sort, after.Name, PackChangeKind.Changed, [.. keys.Select(key => key.Key).Where(key => key.Length > 0)], due, after.Span);
    }

    // A rule of another name that says the same; its name is words for people, a name of the vocabulary is not.
    private static PackChange? Renamed(PackItem item, List<PackItem> gone)
    {
        if (item.Node is not YamlMapping after) return null;
        var was = gone.Find(old => old.Pack == item.Pack && old.Sort == item.Sort && old.Node is YamlMapping before
            && NodeComparer.Keys(before, after, item.Shape).All(key => key.Key == item.Sort));
        if (was is null) return null;
        gone.Remove(was);
        return new PackChange(item.Pack, item.Sort, item.Name, PackChangeKind.Renamed, [], item.IsVocabulary ? VersionPart.Major : VersionPart.Patch, item.Span) { OldName = was.Name };
    }
}
