using ProcedureRules.Diagnostics;
using ProcedureRules.Quantities;
using ProcedureRules.Yaml;

namespace ProcedureRules.Packs;

/// <summary>Reads the facts of a pack.</summary>
internal static class FactReader
{
    private const int MostWords = 64;
    private static readonly IReadOnlyList<string> TypeNames = ["yes_no", "text", .. Dimensions.All.Select(Dimensions.Name)];

    /// <summary>Reads them into the draft.</summary>
    public static void Read(PackDocument pack, PackDraft draft)
    {
        foreach (var (path, map) in pack.Definitions("facts"))
            draft.Facts.Add(path.Text, ReadOne(path, map, pack, draft), pack.Name, path.Span, draft.Bag);
    }

    private static FactDefinition? ReadOne(YamlScalar path, YamlMapping map, PackDocument pack, PackDraft draft)
    {
        var (isDerived, isDemand) = (map.YesNo("derived") ?? false, map.YesNo("demand") ?? false);
        var ask = Snippets.At(map, "ask");
        if (ask is null && !isDerived && !isDemand)
            draft.Bag.Add(Messages.NoQuestion(path.Span, path.Text));
        var type = ReadType(map, draft.Bag);
        var range = type is null ? null : ReadRange(path, map, type, isDemand, draft.Bag);
        if (OwnedPath.Read(path, pack, draft) is not { } owned || type is null)
            return null;
        return new FactDefinition
        {
            Kind = owned.Kind,
            Name = owned.Name,
            Type = type,
            Plausible = range,
            Ask = ask ?? new Snippet(""),
            How = Snippets.At(map, "how"),
            FindOperation = map.Text("find"),
            TakenIn = [.. map.Scalars("taken_in").Select(aspect => aspect.Text)],
            IsDerived = isDerived,
            IsDemand = isDemand,
            Pack = pack.Name,
            Span = path.Span,
        };
    }

    private static FactType? ReadType(YamlMapping map, DiagnosticBag bag)
    {
        if (map.Scalar("type") is { IsNothing: false } name)
        {
            if (name.Text == "yes_no") return FactType.YesNo;
            if (name.Text == "text") return FactType.FreeText;
            if (Dimensions.TryParse(name.Text, out var dimension)) return FactType.Of(dimension);
            if (Forms.NamePattern.Matches(name.Text))
                bag.Add(Messages.UnknownType(name.Span, name.Text, TypeNames));
            return null;
        }

        var words = map.Scalars("type").ToList();
        foreach (var twice in words.GroupBy(word => word.Text, StringComparer.Ordinal).SelectMany(same => same.Skip(1)))
            bag.Add(Messages.WordTwice(twice.Span, twice.Text));
        if (words.Count > MostWords)
            bag.Add(Messages.TooManyWords(map.Value("type")!.Span, "words", MostWords, words.Count));
        return words.Count == 0 ? null : FactType.OneOf([.. words.Select(word => word.Text).Distinct(StringComparer.Ordinal).Take(MostWords)]);
    }

    private static Quantity? ReadRange(YamlScalar path, YamlMapping map, FactType type, bool isDemand, DiagnosticBag bag)
    {
        var range = map.Scalar("range");
        if (type.Dimension is not { } dimension)
        {
            if (range is not null)
                bag.Add(Messages.RangeNotDue(range.Span, path.Text));
            return null;
        }

        if (range is null or { IsNothing: true })
        {
            if (!isDemand)
                bag.Add(Messages.RangeMissing(path.Span, path.Text));
            return null;
        }

        if (!Quantity.TryRead(range.Text, dimension, out var value, out var fault))
            bag.Add(Messages.RangeFault(range.SpanAt(fault.Offset, fault.Length), fault.Message, fault.Suggestion));
        else if (!value.IsBounded || value.IsPoint)
            bag.Add(Messages.RangeFault(range.Span, "a range has two ends, such as 0..12 in", null));
        else
            return value;
        return null;
    }
}
