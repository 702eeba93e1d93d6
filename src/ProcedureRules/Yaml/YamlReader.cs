using ProcedureRules.Diagnostics;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace ProcedureRules.Yaml;

/// <summary>Reads YAML text into nodes that know their places; whatever goes wrong becomes a diagnostic.</summary>
/// <remarks>
/// Built on parse events rather than on a deserializer: each event carries its marks, and nothing is made by
/// reflection. A mistake in the syntax ends the reading of a file; every other one is told and reading goes on.
/// </remarks>
internal sealed class YamlReader
{
    private readonly SourceFile _file;
    private readonly DiagnosticBag _bag;
    private readonly YamlEvents _events;
    private int _nodes;
    private int _depth;

    private YamlReader(SourceFile file, DiagnosticBag bag)
    {
        _file = file;
        _bag = bag;
        _events = new YamlEvents(file);
    }

    /// <summary>Reads the one document of a file.</summary>
    /// <returns>The document, or null after a complaint that nothing can be read.</returns>
    public static YamlNode? Read(SourceFile file, DiagnosticBag bag)
    {
        if (file.Text.Length > YamlLimits.Characters)
        {
            bag.Add(Messages.TooLong(file.Span(0, 0), YamlLimits.Characters));
            return null;
        }

        return YamlCharacters.Check(file, bag) ? new YamlReader(file, bag).ReadGuarded() : null;
    }

    private YamlNode? ReadGuarded()
    {
        try
        {
            return ReadDocument();
        }
        catch (StopReadingException)
        {
            return null;
        }
        catch (Exception failure)
        {
            // The parser documents only YamlException and also lets others out, on some broken flow mappings for
            // instance; no text may bring the reader down, so all of them mean: not well-formed.
            _bag.Add(YamlSyntaxError.From(_file, failure, _events.Reached));
            return null;
        }
    }

    private YamlNode? ReadDocument()
    {
        // The start of the stream, then that of the document or, in an empty file, the end of the stream.
        _events.Advance();
        var root = _events.Advance() is DocumentStart ? ReadNext() : null;
        if (root is not null && SkipDocumentEnd() is DocumentStart second)
            _bag.Add(Messages.SecondDocument(_events.Place(second)));

        if (root is not null and not YamlScalar { IsNothing: true })
            return root;

        _bag.Add(Messages.EmptyFile(_file.Span(0, 0)));
        return null;
    }

    private ParsingEvent SkipDocumentEnd()
    {
        _events.Advance();
        return _events.Advance();
    }

    private YamlNode ReadNext()
    {
        _events.Advance();
        return ReadNode();
    }

    // Starts on the first event of the node and ends on its last.
    private YamlNode ReadNode()
    {
        var current = _events.Current;
        if (++_nodes > YamlLimits.Nodes)
            Stop(Messages.TooManyNodes(_events.Place(current), YamlLimits.Nodes));
        if (current is NodeEvent node)
            RejectTagAndAnchor(node);

        return current switch
        {
            Scalar scalar => ReadScalar(scalar),
            SequenceStart => ReadSequence(current),
            MappingStart => ReadMapping(current),
            _ => ReadAlias(current),
        };
    }

    private YamlInvalid ReadAlias(ParsingEvent alias)
    {
        _bag.Add(Messages.ForbiddenYaml(_events.Place(alias), "an alias ('*')"));
        return new YamlInvalid(_events.Place(alias));
    }

    private YamlScalar ReadScalar(Scalar scalar)
    {
        var style = scalar.Style switch
        {
            ScalarStyle.SingleQuoted => YamlStyle.SingleQuoted,
            ScalarStyle.DoubleQuoted => YamlStyle.DoubleQuoted,
            ScalarStyle.Literal => YamlStyle.Literal,
            ScalarStyle.Folded => YamlStyle.Folded,
            _ => YamlStyle.Plain,
        };
        return new YamlScalar(_events.Place(scalar), scalar.Value, style);
    }

    private YamlSequence ReadSequence(ParsingEvent start)
    {
        Enter(start);
        var items = new List<YamlNode>();
        while (_events.Advance() is not SequenceEnd)
            items.Add(ReadNode());

        return new YamlSequence(Leave(start, items.Count > 0 ? items[^1] : null), items);
    }

    private YamlMapping ReadMapping(ParsingEvent start)
    {
        Enter(start);
        var entries = new Dictionary<string, YamlEntry>(StringComparer.Ordinal);
        var ordered = new List<YamlEntry>();
        YamlNode? last = null;
        while (_events.Advance() is not MappingEnd)
        {
            var key = ReadNode();
            last = ReadNext();
            if (UsableKey(key) is not { } name)
                continue;

            var entry = new YamlEntry(name, last);
            if (entries.TryAdd(name.Text, entry))
                ordered.Add(entry);
            else
                _bag.Add(Messages.DuplicateKey(name.Span, name.Text, entries[name.Text].Key.Span));
        }

        return new YamlMapping(Leave(start, last), ordered);
    }

    private YamlScalar? UsableKey(YamlNode key)
    {
        switch (key)
        {
            case YamlScalar { IsPlain: true, Text: "<<" }:
                _bag.Add(Messages.ForbiddenYaml(key.Span, "a merge key ('<<')"));
                return null;
            case YamlScalar { IsPlain: true, Text: "" }:
                _bag.Add(Messages.KeyMissing(key.Span));
                return null;
            case YamlScalar name:
                return name;
            case YamlInvalid:
                return null;
            default:
                _bag.Add(Messages.KeyNotText(key.Span, key.Kind));
                return null;
        }
    }

    private void RejectTagAndAnchor(NodeEvent node)
    {
        if (!node.Tag.IsEmpty)
            _bag.Add(Messages.ForbiddenYaml(_events.Place(node), "a tag ('!')"));
        if (!node.Anchor.IsEmpty)
            _bag.Add(Messages.ForbiddenYaml(_events.Place(node), "an anchor ('&')"));
    }

    private void Enter(ParsingEvent start)
    {
        if (++_depth > YamlLimits.Depth)
            Stop(Messages.TooDeep(_events.Place(start), YamlLimits.Depth));
    }

    private SourceSpan Leave(ParsingEvent start, YamlNode? last)
    {
        _depth--;
        return _events.PlaceUpToHere(start, last);
    }

    private void Stop(Diagnostic why)
    {
        _bag.Add(why);
        throw new StopReadingException();
    }

    private sealed class StopReadingException : Exception;
}
