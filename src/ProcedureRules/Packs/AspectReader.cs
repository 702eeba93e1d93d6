using ProcedureRules.Diagnostics;
using ProcedureRules.Yaml;

namespace ProcedureRules.Packs;

/// <summary>Reads the aspects of a pack.</summary>
internal static class AspectReader
{
    private const int MostStates = 64;

    /// <summary>Reads them into the draft.</summary>
    public static void Read(PackDocument pack, PackDraft draft)
    {
        foreach (var (path, map) in pack.Definitions("aspects"))
            draft.Aspects.Add(path.Text, ReadOne(path, map, pack, draft), pack.Name, path.Span, draft.Bag);
    }

    /// <summary>Reports aspects that a more general kind has too.</summary>
    public static void CheckHeirs(PackDraft draft)
    {
        foreach (var aspect in draft.Aspects.Items)
        {
            var general = aspect.Kind.Lineage().Skip(1).Select(kind => draft.Aspects.Find($"{kind.Name}.{aspect.Name}")?.Item).FirstOrDefault(found => found is not null);
            if (general is not null)
                draft.Bag.Add(Messages.DefinedOnGeneralKind(aspect.Span, "an aspect", aspect.ToString(), general.Kind.Name, general.Span));
        }
    }

    private static Aspect? ReadOne(YamlScalar path, YamlMapping map, PackDocument pack, PackDraft draft)
    {
        if (OwnedPath.Read(path, pack, draft) is not { } owned)
            return null;
        var states = States(map, draft.Bag);
        if (states.Count == 0 || map.Scalar("normal") is not { } normal)
            return null;
        return new Aspect
        {
            Kind = owned.Kind,
            Name = owned.Name,
            States = states,
            Normal = Math.Max(0, StateOf(normal, path.Text, states, draft.Bag)),
            IsMark = map.YesNo("mark") ?? false,
            While = Whiles(path.Text, map, states, draft.Bag),
            Pack = pack.Name,
            Span = path.Span,
        };
    }

    private static List<string> States(YamlMapping map, DiagnosticBag bag)
    {
        var first = new Dictionary<string, YamlScalar>(StringComparer.Ordinal);
        foreach (var state in map.Scalars("states"))
        {
            if (!first.TryAdd(state.Text, state))
                bag.Add(Messages.StateTwice(state.Span, state.Text, first[state.Text].Span));
        }

        if (first.Count > MostStates)
            bag.Add(Messages.TooManyWords(map.Value("states")!.Span, "states", MostStates, first.Count));
        return [.. first.Keys.Take(MostStates)];
    }

    private static Dictionary<int, IReadOnlyList<Snippet>> Whiles(string path, YamlMapping map, List<string> states, DiagnosticBag bag)
    {
        var whiles = new Dictionary<int, IReadOnlyList<Snippet>>();
        foreach (var entry in map.Map("while")?.Entries ?? [])
        {
            var state = StateOf(entry.Key, path, states, bag);
            if (state >= 0)
                whiles[state] = Snippets.In(entry.Value, bag);
        }

        return whiles;
    }

    private static int StateOf(YamlScalar state, string path, List<string> states, DiagnosticBag bag)
    {
        var index = states.IndexOf(state.Text);
        if (index < 0)
            bag.Add(Messages.UnknownState(state.Span, state.Text, path, states));
        return index;
    }
}
