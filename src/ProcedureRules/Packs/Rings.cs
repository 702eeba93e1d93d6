namespace ProcedureRules.Packs;

/// <summary>Finds names that lead back to themselves.</summary>
internal static class Rings
{
    /// <summary>The first ring, its first name repeated at the end; null if there is none.</summary>
    public static IReadOnlyList<string>? FirstIn(IEnumerable<string> names, Func<string, IEnumerable<string>> next)
    {
        var done = new HashSet<string>(StringComparer.Ordinal);
        foreach (var start in names)
        {
            if (Follow(start, next, done) is { } ring)
                return ring;
        }

        return null;
    }

    // Written without recursion: a hostile pack may chain its names as long as a file allows.
    private static List<string>? Follow(string start, Func<string, IEnumerable<string>> next, HashSet<string> done)
    {
        var path = new List<string>();
        var open = new Stack<IEnumerator<string>>();
        Enter(start);
        while (open.TryPeek(out var successors))
        {
            if (!successors.MoveNext())
            {
                open.Pop();
                path.RemoveAt(path.Count - 1);
                continue;
            }

            var name = successors.Current;
            if (path.IndexOf(name) is >= 0 and var at)
                return [.. path.Skip(at), name];
            Enter(name);
        }

        return null;

        void Enter(string name)
        {
            if (!done.Add(name))
                return;
            path.Add(name);
            open.Push(next(name).GetEnumerator());
        }
    }
}
