using ProcedureRules.Diagnostics;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace ProcedureRules.Yaml;

/// <summary>The parse events of a file one after another, and their places.</summary>
internal sealed class YamlEvents
{
    private readonly SourceFile _file;
    private readonly Scanner _scanner;
    private readonly Parser _parser;

    /// <summary>Stands before the first event.</summary>
    public YamlEvents(SourceFile file)
    {
        _file = file;
        _scanner = new Scanner(new StringReader(file.Text), skipComments: true);
        _parser = new Parser(_scanner);
    }

    /// <summary>The event that was read last.</summary>
    public ParsingEvent Current => _parser.Current ?? throw EndsTooEarly();

    /// <summary>How far into the text the parser has come.</summary>
    public long Reached => _scanner.CurrentPosition.Index;

    /// <summary>Reads the next event.</summary>
    public ParsingEvent Advance() => _parser.MoveNext() ? Current : throw EndsTooEarly();

    /// <summary>The place of an event, without the white space that the parser counts in.</summary>
    public SourceSpan Place(ParsingEvent at)
    {
        var from = Math.Clamp((int)at.Start.Index, 0, _file.Text.Length);
        var to = Math.Clamp((int)at.End.Index, from, _file.Text.Length);
        return _file.Span(from, _file.Text.AsSpan(from, to - from).TrimEnd().Length);
    }

    /// <summary>The place of a list or mapping whose end is the current event.</summary>
    /// <remarks>
    /// The end mark of a block lies at the next token, lines below; its last value is where it ends for a reader. A
    /// bracketed one ends behind its bracket.
    /// </remarks>
    public SourceSpan PlaceUpToHere(ParsingEvent start, YamlNode? last)
    {
        var from = (int)start.Start.Index;
        var end = (int)Current.Start.Index;
        var closes = (CharacterAt(from), CharacterAt(end)) is ('[', ']') or ('{', '}');
        var to = closes ? end + 1 : last?.Span.End ?? from;
        return _file.Span(from, Math.Max(0, to - from));
    }

    private char CharacterAt(int offset) => offset < _file.Text.Length ? _file.Text[offset] : '\0';

    private static InvalidOperationException EndsTooEarly() => new("the text ends too early");
}
