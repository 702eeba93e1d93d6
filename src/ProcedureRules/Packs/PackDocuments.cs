using ProcedureRules.Diagnostics;
using ProcedureRules.Shapes;
using ProcedureRules.Yaml;

namespace ProcedureRules.Packs;

/// <summary>Reads the packs' files as YAML, checks their shape, and settles which pack may use which.</summary>
internal static class PackDocuments
{
    /// <summary>The packs that could be read, in the order of the files.</summary>
    public static IReadOnlyList<PackDocument> Read(IEnumerable<SourceFile> files, PackDraft draft)
    {
        var bag = draft.Bag;
        var roots = new List<(SourceFile File, YamlMapping Root, string Name)>();
        var first = new Dictionary<string, SourceSpan>(StringComparer.Ordinal);
        foreach (var file in files)
        {
            if (ReadRoot(file, bag) is not { } root)
            {
                draft.IsComplete = false;
                continue;
            }

            var name = root.Text("pack") is { Length: > 0 } written ? written : file.Path;
            var span = root.Scalar("pack")?.Span ?? file.Span(0, 0);
            if (first.TryAdd(name, span))
            {
                roots.Add((file, root, name));
                continue;
            }

            draft.IsComplete = false;
            bag.Add(Messages.DefinedTwice(span, "pack", name, first[name]));
        }

        ReportRings(roots.ToDictionary(pack => pack.Name, pack => pack.Root, StringComparer.Ordinal), bag);
        return [.. roots.Select(pack => Head(pack.File, pack.Root, pack.Name, first.Keys, draft))];
    }

    private static YamlMapping? ReadRoot(SourceFile file, DiagnosticBag bag)
    {
        if (YamlReader.Read(file, bag) is not { } node || !FileSorts.MayBe(node, "pack", bag))
            return null;
        var found = new DiagnosticBag();
        ShapeChecker.Check(node, PackShapes.Pack, found);
        bag.AddRange(found.Ordered().Select(ShapeHints.AddTo));
        return node as YamlMapping;
    }

    private static PackDocument Head(
        SourceFile file, YamlMapping root, string name, IReadOnlyCollection<string> packs, PackDraft draft)
    {
        var hasGaps = false;
        var uses = new List<string>();
        foreach (var used in root.Scalars("uses"))
        {
            if (packs.Contains(used.Text))
            {
                uses.Add(used.Text);
                continue;
            }

            hasGaps = true;
            // The missing pack may well be the file that could not be read, and that has been said.
            if (draft.IsComplete)
                draft.Bag.Add(Messages.UnknownPack(used.Span, used.Text, packs.Where(pack => pack != name)));
        }

        var header = new PackHeader(name, root.Text("version") ?? "", root.Text("about") ?? "", uses, file.Path);
        return new PackDocument(header, root, new Scope(name, new HashSet<string>([name, .. uses], StringComparer.Ordinal), hasGaps, draft.Bag));
    }

    private static void ReportRings(Dictionary<string, YamlMapping> packs, DiagnosticBag bag)
    {
        var ring = Rings.FirstIn(packs.Keys, pack => packs.TryGetValue(pack, out var root) ? root.Scalars("uses").Select(used => used.Text) : []);
        if (ring is not null)
            bag.Add(Messages.UsesRing(packs[ring[0]].Scalars("uses").First(used => used.Text == ring[1]).Span, ring));
    }
}
