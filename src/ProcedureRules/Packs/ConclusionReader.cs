using ProcedureRules.Diagnostics;
using ProcedureRules.Yaml;

namespace ProcedureRules.Packs;

/// <summary>Reads conclusions as they are written.</summary>
internal static class ConclusionReader
{
    /// <summary>What a rule says to do where it is possible but not sure.</summary>
    public static IfUnknown ReadIfUnknown(YamlMapping map) => map.Text("if_unknown") switch
    {
        "do" => IfUnknown.Do,
        "behind_check" => IfUnknown.BehindCheck,
        "hold" => IfUnknown.Hold,
        _ => IfUnknown.Default,
    };

    /// <summary>The conclusions of the list of a key; what the check of shapes has complained about is left out.</summary>
    public static IReadOnlyList<ConclusionDeclaration> Read(YamlMapping owner, string key, DiagnosticBag bag) =>
        [.. owner.Maps(key).SelectMany(map => ReadOne(map, bag))];

    private static IEnumerable<ConclusionDeclaration> ReadOne(YamlMapping map, DiagnosticBag bag)
    {
        if (ConclusionShapes.Keywords.FirstOrDefault(map.Has) is not { } keyword)
            return [];
        var beside = new Dictionary<string, Snippet>(StringComparer.Ordinal);
        AddTexts(map, beside, keyword, "if_unknown");
        switch (map.Value(keyword))
        {
            case YamlSequence when keyword == "one_of":
                return [Declare([.. map.Maps(keyword).Select(option => ReadOption(option, bag)).OfType<OptionDeclaration>()])];
            case YamlMapping wait when keyword == "wait":
                AddTexts(wait, beside);
                return [Declare([])];
            case YamlMapping targets when keyword is "set" or "at_least" or "at_most":
                return targets.Entries.Where(entry => entry.Value is YamlScalar { IsNothing: false })
                    .Select(entry => Declare([], new Snippet((YamlScalar)entry.Value), new Snippet(entry.Key)));
            case YamlScalar { IsNothing: false } text when keyword is not ("one_of" or "wait" or "set" or "at_least" or "at_most"):
                return [Declare([], new Snippet(text))];
            default:
                return [];
        }

        ConclusionDeclaration Declare(IReadOnlyList<OptionDeclaration> options, Snippet? text = null, Snippet? target = null) => new()
        {
            Keyword = keyword,
            Span = map.Entry(keyword)!.Key.Span,
            Text = text,
            Target = target,
            Beside = beside,
            IfUnknown = ReadIfUnknown(map),
            Options = options,
        };
    }

    private static void AddTexts(YamlMapping map, Dictionary<string, Snippet> beside, params ReadOnlySpan<string> except)
    {
        foreach (var entry in map.Entries)
        {
            if (!except.Contains(entry.Name) && entry.Value is YamlScalar { IsNothing: false } text)
                beside[entry.Name] = new Snippet(text);
        }
    }

    private static OptionDeclaration? ReadOption(YamlMapping map, DiagnosticBag bag) => Snippets.At(map, "option") is { } text
        ? new OptionDeclaration(text, map.Integer("rank") ?? 0, Snippets.At(map, "if"), Read(map, "then", bag), map.Scalar("option")!.Span)
        : null;
}
