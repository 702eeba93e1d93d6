using ProcedureRules.Diagnostics;

namespace ProcedureRules.Packs;

/// <summary>Reads packs into one vocabulary and the rules as written; tells the mistakes of all files at once.</summary>
internal static class PackReader
{
    /// <summary>Reads packs, and takes archetype sheets along.</summary>
    /// <param name="files">The packs, in the order that breaks ties.</param>
    /// <param name="bag">Takes what is wrong; what could be read is returned all the same.</param>
    /// <param name="archetypes">Archetype sheets by name.</param>
    public static PackSet Read(IReadOnlyList<SourceFile> files, DiagnosticBag bag, IReadOnlyDictionary<string, SourceFile>? archetypes = null)
    {
        var draft = new PackDraft(bag);
        var packs = PackDocuments.Read(files, draft);
        ReadWords(packs, draft);
        KindReader.Read(packs, draft);
        foreach (var pack in packs)
        {
            AspectReader.Read(pack, draft);
            FactReader.Read(pack, draft);
            RelationReader.Read(pack, draft);
            JobReader.Read(pack, draft);
        }

        OperationReader.Read(packs, draft);
        var rules = new Dictionary<string, SourceSpan>(StringComparer.Ordinal);
        foreach (var pack in packs)
        {
            RuleReader.Read(pack, draft, rules);
            FactChecks.CheckFinding(pack, draft);
        }

        Check(packs, draft);
        return new PackSet
        {
            Headers = [.. packs.Select(pack => pack.Header)],
            Vocabulary = draft.ToVocabulary(),
            Files = files,
            Rules = draft.Rules,
            Laws = draft.Laws,
            Tables = draft.Tables,
            Accepted = [.. packs.SelectMany(AcceptanceReader.Read)],
            Archetypes = archetypes ?? new Dictionary<string, SourceFile>(),
            Broken = draft.Broken(),
            WithGaps = packs.Where(pack => pack.Scope.HasGaps).Select(pack => pack.Name).ToHashSet(StringComparer.Ordinal),
        };
    }

    private static void ReadWords(IReadOnlyList<PackDocument> packs, PackDraft draft)
    {
        foreach (var pack in packs)
        {
            foreach (var place in pack.Root.Scalars("places"))
                draft.Places.Add(place.Text, place.Text, pack.Name, place.Span, draft.Bag);
            foreach (var energy in pack.Root.Scalars("energies"))
                draft.Energies.Add(energy.Text, energy.Text, pack.Name, energy.Span, draft.Bag);
        }
    }

    private static void Check(IReadOnlyList<PackDocument> packs, PackDraft draft)
    {
        AspectReader.CheckHeirs(draft);
        FactChecks.CheckNames(draft);
        // What is missing because a file or an operation could not be read must not be called missing.
        if (!draft.IsComplete || packs.Any(pack => pack.Scope.HasGaps))
            return;
        FactChecks.CheckGiven(draft);
        if (draft.Operations.Definitions.All(operation => operation.Value.Item is not null))
            WayBackCheck.Check(draft);
    }
}
