using ProcedureRules.Diagnostics;
using YamlDotNet.Core;

namespace ProcedureRules.Yaml;

/// <summary>Turns what the YAML parser throws into a diagnostic at the best known place.</summary>
internal static class YamlSyntaxError
{
    // The parser speaks of scalars and tokens; these say the same to somebody who writes packs.
    private static readonly (string Part, string Meaning)[] Meanings =
    [
        ("found invalid mapping", "a text that holds ': ' has to stand in quotes"),
        ("found unexpected end of stream", "the quote that opens here is never closed"),
        ("found character that cannot start any token", "a text that starts with this character has to stand in quotes"),
        ("unknown escape character", "a backslash within double quotes starts an escape; use single quotes to keep it"),
        ("did not find expected ',' or ']'", "',' or ']' is expected here"),
        ("did not find expected ',' or '}'", "',' or '}' is expected here"),
        ("did not find expected '-' indicator", "'- ' is expected here, as before the items above"),
        ("did not find expected key", "a key is expected here, as far in as the keys above"),
        ("did not find expected node content", "a value is expected here"),
    ];

    /// <summary>The diagnostic of an exception.</summary>
    /// <param name="file">The file that was read.</param>
    /// <param name="failure">What the parser threw.</param>
    /// <param name="reached">How far the parser had come, for exceptions without a place.</param>
    public static Diagnostic From(SourceFile file, Exception failure, long reached)
    {
        // Some exceptions come with an empty mark that looks like the file's start; it is believed on the first line only.
        var marked = failure as YamlException;
        var isMarkBelieved = marked is { Start.Index: > 0 } || (marked is not null && file.LineOf((int)reached) == 1);
        var offset = isMarkBelieved ? marked!.Start.Index : reached;
        var place = file.Span((int)Math.Clamp(offset, 0, file.Text.Length), 0);
        if (IndentingTab(file, place.Line) is { } tab)
            return Messages.TabIndent(tab);

        return Messages.YamlSyntax(place, marked is null ? "a bracket, a comma or a quote is missing" : Meaning(marked.Message));
    }

    private static SourceSpan? IndentingTab(SourceFile file, int line)
    {
        var text = file.LineText(line);
        var indent = text.Length - text.TrimStart(' ', '\t').Length;
        var tab = text.IndexOf('\t', 0, indent);
        return tab < 0 ? null : file.Span(file.OffsetOf(line) + tab, 1);
    }

    private static string Meaning(string message)
    {
        foreach (var (part, meaning) in Meanings)
        {
            if (message.Contains(part, StringComparison.Ordinal))
                return meaning;
        }

        var plain = message.ReplaceLineEndings(" ").TrimEnd('.', ' ');
        return plain.Length > 1 && char.IsLower(plain[1]) ? char.ToLowerInvariant(plain[0]) + plain[1..] : plain;
    }
}
