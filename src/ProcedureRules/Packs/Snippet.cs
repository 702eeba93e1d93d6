using ProcedureRules.Diagnostics;
using ProcedureRules.Yaml;

namespace ProcedureRules.Packs;

/// <summary>A text inside a pack or sheet that is a language of its own (an expression, a template), with its way back to the file.</summary>
public sealed class Snippet
{
    private readonly YamlScalar? _node;

    internal Snippet(YamlScalar node)
    {
        _node = node;
        Text = node.Text;
    }

    /// <summary>A snippet made by a program rather than read from a file.</summary>
    public Snippet(string text) => Text = text;

    /// <summary>The text as the language sees it.</summary>
    public string Text { get; }

    /// <summary>The span of the whole text in its file.</summary>
    public SourceSpan Span => _node?.Span ?? SourceSpan.None;

    /// <summary>Maps a piece of the text to its place in the file.</summary>
    public SourceSpan SpanOf(int offset, int length) => _node?.SpanAt(offset, length) ?? SourceSpan.None;

    /// <inheritdoc/>
    public override string ToString() => Text;
}
