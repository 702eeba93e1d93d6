using ProcedureRules.Shapes;
using ProcedureRules.Yaml;

namespace ProcedureRules.Tests.Docs;

/// <summary>Walks shapes: which mappings there are, and which of their keys a file uses.</summary>
internal static class ShapeWalk
{
    /// <summary>Every mapping with known keys in and below a shape, each once, in the order of the reference.</summary>
    public static IReadOnlyList<MapShape> Maps(Shape root)
    {
        var seen = new HashSet<Shape>();
        var maps = new List<MapShape>();
        Visit(root);
        return maps;

        void Visit(Shape shape)
        {
            shape = RefShape.Resolve(shape);
            if (!seen.Add(shape)) return;
            if (shape is MapShape map) maps.Add(map);
            foreach (var child in Children(shape)) Visit(child);
        }
    }

    /// <summary>The keys that a file uses, as <c>a rule: when</c>.</summary>
    public static HashSet<string> KeysUsed(YamlNode node, Shape shape)
    {
        var used = new HashSet<string>();
        Visit(node, shape);
        return used;

        void Visit(YamlNode value, Shape due)
        {
            switch (RefShape.Resolve(due), value)
            {
                case (MapShape map, YamlMapping written):
                    foreach (var entry in written.Entries.Where(entry => map.Field(entry.Name) is not null))
                    {
                        used.Add(Words(map, entry.Name));
                        Visit(entry.Value, map.Field(entry.Name)!.Shape);
                    }

                    break;
                case (DictionaryShape dictionary, YamlMapping written):
                    foreach (var entry in written.Entries) Visit(entry.Value, dictionary.Value);
                    break;
                case (ListShape list, YamlSequence written):
                    foreach (var item in written.Items) Visit(item, list.Item);
                    break;
                case (OneOfShape oneOf, YamlMapping written):
                    var way = oneOf.Alternatives.FirstOrDefault(one => one.Key is not null && written.Has(one.Key))?.Shape ?? oneOf.Map;
                    if (way is not null) Visit(value, way);
                    break;
                case (OneOfShape { List: { } ofItems }, YamlSequence):
                    Visit(value, ofItems);
                    break;
            }
        }
    }

    public static string Words(MapShape map, string key) => $"{map.Noun}: {key}";

    private static IEnumerable<Shape> Children(Shape shape) => shape switch
    {
        ListShape list => [list.Item],
        DictionaryShape dictionary => [dictionary.Value],
        MapShape map => map.Fields.Select(field => field.Shape),
        OneOfShape oneOf => oneOf.Alternatives.Select(way => way.Shape),
        _ => [],
    };
}
