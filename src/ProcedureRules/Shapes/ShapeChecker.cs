using System.Diagnostics;
using ProcedureRules.Diagnostics;
using ProcedureRules.Spelling;
using ProcedureRules.Yaml;

namespace ProcedureRules.Shapes;

/// <summary>Compares a file with its shape and tells all differences at once.</summary>
internal sealed class ShapeChecker
{
    private readonly DiagnosticBag _bag;

    private ShapeChecker(DiagnosticBag bag) => _bag = bag;

    /// <summary>Checks a value and everything in it.</summary>
    public static void Check(YamlNode node, Shape shape, DiagnosticBag bag) => new ShapeChecker(bag).Visit(node, shape);

    private void Visit(YamlNode node, Shape shape)
    {
        // What could not be read has been reported where it was read.
        if (node is YamlInvalid)
            return;

        switch (RefShape.Resolve(shape))
        {
            case TextShape text: VisitText(node, text); break;
            case WordShape words: VisitWord(node, words); break;
            case YesNoShape yesNo: VisitYesNo(node, yesNo); break;
            case IntegerShape integer: VisitInteger(node, integer); break;
            case ListShape list: VisitList(node, list); break;
            case MapShape map: VisitMap(node, map); break;
            case DictionaryShape dictionary: VisitDictionary(node, dictionary); break;
            case OneOfShape oneOf: VisitOneOf(node, oneOf); break;
            default: throw new UnreachableException();
        }
    }

    private void VisitText(YamlNode node, TextShape shape)
    {
        if (Expect<YamlScalar>(node, shape) is not { } scalar)
            return;

        if (shape.Pattern is { } form && !form.Matches(scalar.Text))
            _bag.Add(Messages.WrongForm(scalar.Span, scalar.Text, form.InWords, shape.Examples));
    }

    private void VisitWord(YamlNode node, WordShape shape)
    {
        if (Expect<YamlScalar>(node, shape) is { } scalar && !shape.Words.Contains(scalar.Text))
            _bag.Add(Messages.NotOneOfTheWords(scalar.Span, scalar.Text, shape.Words));
    }

    private void VisitYesNo(YamlNode node, YesNoShape shape)
    {
        if (node is not YamlScalar scalar || scalar.AsYesNo() is null)
            ReportKind(node, shape);
    }

    private void VisitInteger(YamlNode node, IntegerShape shape)
    {
        if (node is not YamlScalar scalar || !scalar.IsWholeNumber)
            ReportKind(node, shape);
        else if (scalar.AsInteger() is not { } number || number < shape.Min || number > shape.Max)
            _bag.Add(Messages.NumberOutOfBounds(scalar.Span, scalar.Text, shape.Min, shape.Max));
    }

    private void VisitList(YamlNode node, ListShape shape)
    {
        if (Expect<YamlSequence>(node, shape) is not { } list)
            return;

        if (list.Items.Count < shape.Min)
            _bag.Add(Messages.ListTooShort(list.Span, shape.Min, list.Items.Count));
        foreach (var item in list.Items)
            Visit(item, shape.Item);
    }

    private void VisitMap(YamlNode node, MapShape shape)
    {
        if (Expect<YamlMapping>(node, shape) is not { } map)
            return;

        foreach (var entry in map.Entries)
        {
            if (shape.Field(entry.Name) is { } field)
                Visit(entry.Value, field.Shape);
            else
                _bag.Add(Messages.UnknownKey(entry.Key.Span, entry.Name, shape.Noun, Unwritten(shape, map)));
        }

        foreach (var field in shape.Fields.Where(field => field.IsRequired && !map.Has(field.Name)))
            _bag.Add(Messages.MissingKey(Head(map), field.Name, shape.Noun));
    }

    private void VisitDictionary(YamlNode node, DictionaryShape shape)
    {
        if (Expect<YamlMapping>(node, shape) is not { } map)
            return;

        foreach (var entry in map.Entries)
        {
            if (shape.KeyPattern is { } form && !form.Matches(entry.Name))
                _bag.Add(Messages.WrongForm(entry.Key.Span, entry.Name, form.InWords, []));
            Visit(entry.Value, shape.Value);
        }
    }

    private void VisitOneOf(YamlNode node, OneOfShape shape)
    {
        var meant = node switch
        {
            YamlScalar { IsNothing: false } => shape.Scalar,
            YamlSequence => shape.List,
            YamlMapping map => shape.Alternatives.FirstOrDefault(way => way.Key is not null && map.Has(way.Key))?.Shape ?? shape.Map,
            _ => null,
        };
        if (meant is not null)
            Visit(node, meant);
        else if (node is YamlMapping map)
            ReportNoKey(map, shape);
        else
            ReportKind(node, shape);
    }

    // A misspelt deciding key is the likeliest mistake: say that, rather than list everything that could stand here.
    private void ReportNoKey(YamlMapping map, OneOfShape shape)
    {
        var keys = shape.Keys.ToList();
        if (keys.Count == 0)
        {
            ReportKind(map, shape);
            return;
        }

        var misspelt = map.Entries.FirstOrDefault(entry => NearestName.Find(entry.Name, keys) is not null);
        _bag.Add(misspelt is null
            ? Messages.NoDecidingKey(Head(map), shape.Noun, keys)
            : Messages.UnknownKey(misspelt.Key.Span, misspelt.Name, shape.Noun, keys));
    }

    private T? Expect<T>(YamlNode node, Shape shape)
        where T : YamlNode
    {
        if (node is T right && node is not YamlScalar { IsNothing: true })
            return right;

        ReportKind(node, shape);
        return null;
    }

    private void ReportKind(YamlNode node, Shape shape)
    {
        var expected = ShapeWords.Expected(shape);
        _bag.Add(node switch
        {
            YamlScalar { IsNothing: true } => Messages.NothingWritten(node.Span, expected),
            YamlScalar scalar => Messages.WrongKind(node.Span, expected, $"{scalar.Kind} ({Messages.Quote(scalar.Text)})"),
            _ => Messages.WrongKind(node.Span, expected, node.Kind),
        });
    }

    private static IEnumerable<string> Unwritten(MapShape shape, YamlMapping map) =>
        shape.Fields.Select(field => field.Name).Where(name => !map.Has(name));

    // A mapping as a whole may be long; its first key is where a reader looks.
    private static SourceSpan Head(YamlMapping map) => map.Entries.Count > 0 ? map.Entries[0].Key.Span : map.Span;
}
