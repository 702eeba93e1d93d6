using ProcedureRules.Diagnostics;
using ProcedureRules.Logic;
using ProcedureRules.Yaml;

namespace ProcedureRules.Packs;

/// <summary>Reads the kinds of all packs; a more general kind is made before those that name it.</summary>
internal sealed class KindReader
{
    private readonly PackDraft _draft;
    private readonly Dictionary<string, (PackDocument Pack, YamlScalar Name, YamlMapping? Map)> _written = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Kind> _made = new(StringComparer.Ordinal);
    private readonly NameTable<Kind> _declared = new("kind");
    private readonly HashSet<string> _ring;

    private KindReader(IReadOnlyList<PackDocument> packs, PackDraft draft)
    {
        _draft = draft;
        _made[Vocabulary.RootKind] = new Kind { Name = Vocabulary.RootKind, Text = "part" };
        _declared.Add(Vocabulary.RootKind, _made[Vocabulary.RootKind], "", SourceSpan.None, draft.Bag);
        foreach (var pack in packs)
        {
            foreach (var entry in pack.Root.Map("kinds")?.Entries ?? [])
                Declare(pack, entry);
        }

        _ring = ReportRing();
    }

    /// <summary>Reads all kinds into the draft, in the order of the packs.</summary>
    public static void Read(IReadOnlyList<PackDocument> packs, PackDraft draft)
    {
        var reader = new KindReader(packs, draft);
        draft.Kinds.Add(Vocabulary.RootKind, reader._made[Vocabulary.RootKind], "", SourceSpan.None, draft.Bag);
        foreach (var (name, (pack, key, _)) in reader._written)
            draft.Kinds.Add(name, reader.Make(name), pack.Name, key.Span, draft.Bag);
        reader.ReadCompany();
        if (packs.Count > 0 && !reader._written.ContainsKey(Vocabulary.VehicleKind) && draft.IsComplete && !packs.Any(pack => pack.Scope.HasGaps))
            draft.Bag.Add(Messages.NoVehicleKind(packs[0].Root.Scalar("pack")?.Span ?? packs[0].Root.Span));
    }

    private void Declare(PackDocument pack, YamlEntry entry)
    {
        if (entry.Name == Vocabulary.RootKind)
        {
            _draft.Bag.Add(Messages.RootKindDefined(entry.Key.Span));
            return;
        }

        _declared.Add(entry.Name, null, pack.Name, entry.Key.Span, _draft.Bag);
        _written.TryAdd(entry.Name, (pack, entry.Key, entry.Value as YamlMapping));
    }

    private HashSet<string> ReportRing()
    {
        var ring = Rings.FirstIn(_written.Keys, name => _written.TryGetValue(name, out var kind) && kind.Map?.Text("is") is { } general ? [general] : []);
        if (ring is null)
            return [];
        _draft.Bag.Add(Messages.KindRing(_written[ring[0]].Map!.Scalar("is")!.Span, ring));
        return new HashSet<string>(ring, StringComparer.Ordinal);
    }

    private Kind Make(string name)
    {
        // From the special to the general, then made the other way round; without recursion, as chains may be long.
        var chain = new Stack<string>();
        for (var at = name; !_made.ContainsKey(at); at = GeneralOf(at))
        {
            chain.Push(at);
            if (chain.Count > _written.Count)
                return MakeAsPart(name);
        }

        while (chain.TryPop(out var next))
            _made[next] = MakeOne(next, _made[GeneralOf(next)]);
        return _made[name];
    }

    // Kinds may go with each other, so all are made first.
    private void ReadCompany()
    {
        foreach (var (name, (pack, _, map)) in _written)
        {
            if (map is null) continue;
            foreach (var other in map.Scalars("goes_with")) pack.Scope.Find(_declared, other);
            _made[name].GoesWith = [.. map.Scalars("goes_with").Select(other => _made.GetValueOrDefault(other.Text)).OfType<Kind>()];
        }
    }

    private string GeneralOf(string name) =>
        !_ring.Contains(name) && _written[name].Map?.Text("is") is { } general && _declared.Find(general) is not null
            ? general
            : Vocabulary.RootKind;

    private Kind MakeAsPart(string name) => _made[name] = MakeOne(name, _made[Vocabulary.RootKind]);

    private Kind MakeOne(string name, Kind general)
    {
        var (pack, key, map) = _written[name];
        if (map?.Scalar("is") is { IsNothing: false } written)
            pack.Scope.Find(_declared, written);
        return new Kind
        {
            Name = name,
            Text = map?.Text("text") ?? name.Replace('_', ' '),
            Parent = general,
            IfSilent = map?.Text("if_silent") == "unknown" ? Truth.Unknown : Truth.No,
            Pack = pack.Name,
            Span = key.Span,
        };
    }
}
