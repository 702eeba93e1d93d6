using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Packs;
using ProcedureRules.Shapes;
using ProcedureRules.Yaml;

namespace ProcedureRules.Testing.Comparing;

/// <summary>Everything that packs declare, item by item, and the archetypes beside them.</summary>
internal static class PackItems
{
    private static readonly Shape About = PackShapes.Pack.Field("about")!.Shape;

    /// <summary>The items in the order of the files.</summary>
    public static IReadOnlyList<PackItem> Of(PackSet packs) =>
        [.. packs.Files.SelectMany(file => Root(file) is { } root ? Pack(root) : []), .. packs.Archetypes.Select(Archetype).OfType<PackItem>()];

    private static IEnumerable<PackItem> Pack(YamlMapping root)
    {
        var pack = root.Text("pack") ?? "";
        if (root.Entry("about") is { } about) yield return new PackItem(pack, "pack", pack, about.Value, About, about.Key.Span);
        foreach (var field in PackShapes.Pack.Fields)
        {
            var items = (RefShape.Resolve(field.Shape), root.Value(field.Name)) switch
            {
                (DictionaryShape { Value: RefShape one }, YamlMapping named) =>
                    named.Entries.Select(entry => new PackItem(pack, one.Name, entry.Name, entry.Value, one, entry.Key.Span)),
                (ListShape { Item: RefShape one }, YamlSequence list) => list.Items.OfType<YamlMapping>().Where(map => map.Scalar(one.Name) is not null)
                    .Select(map => new PackItem(pack, one.Name, map.Text(one.Name)!, map, one, map.Scalar(one.Name)!.Span)),
                (ListShape list, YamlSequence words) =>
                    words.Items.OfType<YamlScalar>().Select(word => new PackItem(pack, Singular(field.Name), word.Text, word, list.Item, word.Span)),
                _ => [],
            };
            foreach (var item in items) yield return item;
        }
    }

    private static PackItem? Archetype(KeyValuePair<string, SourceFile> sheet) =>
        Root(sheet.Value) is { } root ? new PackItem("", "archetype", sheet.Key, root, SheetShapes.Vehicle, root.Span) : null;

    private static YamlMapping? Root(SourceFile file) => YamlReader.Read(file, new DiagnosticBag()) as YamlMapping;

    // places, uses; energies
    private static string Singular(string key) => key.EndsWith("ies", StringComparison.Ordinal) ? $"{key[..^3]}y" : key[..^1];
}
