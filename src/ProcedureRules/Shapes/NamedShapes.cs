namespace ProcedureRules.Shapes;

/// <summary>Finds all shapes that a shape refers to by name.</summary>
internal static class NamedShapes
{
    /// <summary>The named shapes in and below a shape, by name.</summary>
    public static SortedDictionary<string, RefShape> In(Shape root)
    {
        var found = new SortedDictionary<string, RefShape>(StringComparer.Ordinal);
        var open = new Stack<Shape>([root]);
        while (open.TryPop(out var shape))
        {
            // A name met before is not entered again: shapes may hold themselves.
            if (shape is RefShape named && !found.TryAdd(named.Name, named))
                continue;
            foreach (var child in Children(shape))
                open.Push(child);
        }

        return found;
    }

    private static IEnumerable<Shape> Children(Shape shape) => shape switch
    {
        RefShape named => [named.Target],
        ListShape list => [list.Item],
        DictionaryShape dictionary => [dictionary.Value],
        MapShape map => map.Fields.Select(field => field.Shape),
        OneOfShape oneOf => oneOf.Alternatives.Select(way => way.Shape),
        _ => [],
    };
}
