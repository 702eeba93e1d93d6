using ProcedureRules.Diagnostics;
using ProcedureRules.Yaml;

namespace ProcedureRules.Packs;

/// <summary>Takes texts out of YAML lists, and notices those that a comma has cut in two.</summary>
internal static class Snippets
{
    /// <summary>The text of a key, or null.</summary>
    public static Snippet? At(YamlMapping map, string key) =>
        map.Scalar(key) is { IsNothing: false } scalar ? new Snippet(scalar) : null;

    /// <summary>The texts of the list of a key; empty if there is none.</summary>
    public static IReadOnlyList<Snippet> In(YamlMapping map, string key, DiagnosticBag bag) => In(map.Value(key), bag);

    /// <summary>The texts of a list; empty if it is none.</summary>
    public static IReadOnlyList<Snippet> In(YamlNode? list, DiagnosticBag bag) =>
        [.. Whole((list as YamlSequence)?.Items ?? [], bag).OfType<YamlScalar>().Select(scalar => new Snippet(scalar))];

    /// <summary>
    /// The items that are whole. In <c>[ covers(a, b) ]</c> YAML sees two texts; no text of the language leaves a parenthesis open, so
    /// one that does and is closed by a later item was cut.
    /// </summary>
    public static IReadOnlyList<YamlNode> Whole(IReadOnlyList<YamlNode> items, DiagnosticBag bag)
    {
        var whole = new List<YamlNode>();
        for (var i = 0; i < items.Count; i++)
        {
            if (LastPiece(items, i) is not { } last)
            {
                if (items[i] is not YamlScalar { IsNothing: true })
                    whole.Add(items[i]);
                continue;
            }

            bag.Add(Messages.SplitEntry(items[i].Span.To(items[last].Span), ((YamlScalar)items[i]).Text));
            i = last;
        }

        return whole;
    }

    private static int? LastPiece(IReadOnlyList<YamlNode> items, int start)
    {
        var open = Open(items[start]);
        if (open <= 0)
            return null;
        for (var i = start + 1; i < items.Count; i++)
        {
            open += Open(items[i]);
            if (open <= 0)
                return i;
        }

        return null;
    }

    private static int Open(YamlNode item) =>
        item is YamlScalar { IsPlain: true } scalar ? scalar.Text.Count(c => c == '(') - scalar.Text.Count(c => c == ')') : 0;
}
