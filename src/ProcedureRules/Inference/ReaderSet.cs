using ProcedureRules.Facts;
using ProcedureRules.Packs;

namespace ProcedureRules.Inference;

/// <summary>
/// The conditions that read one predicate, told apart by the kind of part they are about: a relation that a thousand rules read concerns
/// only those about its own parts.
/// </summary>
internal sealed class ReaderSet
{
    private readonly List<Reader> _ofAny = [];
    private readonly Dictionary<Kind, List<Reader>> _byFirst = [];
    private readonly Dictionary<Kind, List<Reader>> _bySecond = [];

    public void Add(Reader reader)
    {
        var pattern = reader.Plan.Patterns[reader.Pattern];
        if (KindOf(reader, pattern.First) is { } first) ListOf(_byFirst, first).Add(reader);
        else if (KindOf(reader, pattern.Second) is { } second) ListOf(_bySecond, second).Add(reader);
        else _ofAny.Add(reader);
    }

    /// <summary>The conditions that a ground fact can meet, as far as kinds tell.</summary>
    public void ForEach(Ground ground, Action<Reader> visit)
    {
        foreach (var reader in _ofAny) visit(reader);
        Visit(_byFirst, ground.First, visit);
        Visit(_bySecond, ground.Second, visit);
    }

    private static void Visit(Dictionary<Kind, List<Reader>> byKind, object? item, Action<Reader> visit)
    {
        if (byKind.Count == 0 || item is not Part part) return;
        for (var kind = part.Kind; kind is not null; kind = kind.Parent)
        {
            if (!byKind.TryGetValue(kind, out var readers)) continue;
            foreach (var reader in readers) visit(reader);
        }
    }

    private static Kind? KindOf(Reader reader, int slot) => slot < 0 ? null : reader.Plan.Rule.Variables[slot].Kind;

    private static List<Reader> ListOf(Dictionary<Kind, List<Reader>> lists, Kind kind)
    {
        if (!lists.TryGetValue(kind, out var list)) lists.Add(kind, list = []);
        return list;
    }
}
