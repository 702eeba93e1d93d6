using ProcedureRules.Packs;
using ProcedureRules.Shapes;
using ProcedureRules.Yaml;

namespace ProcedureRules.Testing.Comparing;

/// <summary>Compares two pieces of a pack by what they look like: the shapes tell words for people from what is reckoned with.</summary>
internal static class NodeComparer
{
    /// <summary>How far they are apart; a piece that is missing is null.</summary>
    public static Deviation Compare(YamlNode? before, YamlNode? after, Shape shape)
    {
        if (before is null && after is null) return Deviation.None;
        shape = RefShape.Resolve(shape);
        if (before is null || after is null) return IsForPeople(shape) ? Deviation.Words : Deviation.Meaning;
        return (before, after) switch
        {
            (YamlScalar a, YamlScalar b) => a.Text == b.Text ? Deviation.None : IsForPeople(shape is OneOfShape { Scalar: { } scalar } ? scalar : shape) ? Deviation.Words : Deviation.Meaning,
            (YamlSequence a, YamlSequence b) => Lists(a, b, shape),
            (YamlMapping a, YamlMapping b) => Maps(a, b, shape),
            _ => Deviation.Meaning,
        };
    }

    /// <summary>The keys of two mappings that are apart, with how far.</summary>
    public static IEnumerable<(string Key, Deviation Deviation)> Keys(YamlMapping before, YamlMapping after, Shape shape)
    {
        shape = RefShape.Resolve(shape);
        if (shape is OneOfShape choice) shape = RefShape.Resolve(choice.Alternatives.FirstOrDefault(way => way.Key is not null && before.Has(way.Key) && after.Has(way.Key))?.Shape ?? choice.Map ?? choice);
        foreach (var key in before.Entries.Concat(after.Entries).Select(entry => entry.Name).Distinct(StringComparer.Ordinal))
        {
            var of = shape switch { MapShape map => map.Field(key)?.Shape, DictionaryShape named => named.Value, _ => null };
            var deviation = of is null ? Deviation.Meaning : Compare(before.Value(key), after.Value(key), of);
            if (deviation != Deviation.None) yield return (key, deviation);
        }
    }

    private static Deviation Maps(YamlMapping before, YamlMapping after, Shape shape) => Keys(before, after, shape).Select(key => key.Deviation).DefaultIfEmpty().Max();

    private static Deviation Lists(YamlSequence before, YamlSequence after, Shape shape)
    {
        var item = (shape as ListShape ?? RefShape.Resolve((shape as OneOfShape)?.List ?? shape) as ListShape)?.Item;
        if (item is null || before.Items.Count != after.Items.Count) return Deviation.Meaning;
        return before.Items.Zip(after.Items, (a, b) => Compare(a, b, item)).DefaultIfEmpty().Max();
    }

    private static bool IsForPeople(Shape shape) => ReferenceEquals(shape, Forms.Text) || ReferenceEquals(shape, Forms.Template)
        || (shape is DictionaryShape named && IsForPeople(RefShape.Resolve(named.Value)));
}
