namespace ProcedureRules.Quantities;

/// <summary>The faults that need more than a sentence to find, in one place so that their wording stays of a piece.</summary>
internal static class QuantityFaults
{
    private const double Atmosphere = 101325;

    private static readonly (string Name, string Plain)[] AmbiguousNames =
        [("inHg", "inHg vac"), ("in.Hg", "inHg vac"), ("in Hg", "inHg vac"), ("\"Hg", "inHg vac"), ("mmHg", "mmHg abs"), ("Pa", "Pa abs")];

    /// <summary>Says what stands where the quantity should have ended.</summary>
    /// <param name="text">The whole text.</param>
    /// <param name="at">Where the rest begins; not a blank.</param>
    /// <param name="hasUnit">Whether the last end before it had a unit.</param>
    public static QuantityFault AtRest(ReadOnlySpan<char> text, int at, bool hasUnit)
    {
        var rest = text[at..];
        var next = rest.Length > 1 ? rest[1] : ' ';
        if (rest[0] == ',' && char.IsAsciiDigit(next)) return Comma(text, at);
        if (rest[0] is '-' or '\u2212' && (char.IsAsciiDigit(next) || next == ' '))
            return new(QuantityFaultKind.RangeMark, "a range is written with two dots, a fraction after a space (1 1/4)", at, 1, "..");
        if (rest[0] == '/')
            return new(QuantityFaultKind.BadFraction, "a fraction is written without spaces, such as 3/8", at, 1);
        var word = WordAt(text, at);
        if (word is "to") return new(QuantityFaultKind.RangeMark, "a range is written with two dots", at, 2, "..");
        if (!hasUnit && word.Length > 0 && !char.IsAsciiDigit(word[0])) return UnknownUnit(text, at, word);
        var found = word.Length > 0 ? word : rest[0].ToString();
        return new(QuantityFaultKind.TrailingText, $"the quantity should end before '{found}'", at, found.Length);
    }

    public static QuantityFault UnknownUnit(ReadOnlySpan<char> text, int at, string word) => Ambiguous(text, at)
        ?? new(QuantityFaultKind.UnknownUnit, $"'{word}' is not a unit here", at, word.Length, UnitTable.Nearest(word) is { } near && near != word ? near : null);

    /// <summary>The fault of a unit that does not say from where it counts, if one stands here.</summary>
    public static QuantityFault? Ambiguous(ReadOnlySpan<char> text, int at)
    {
        foreach (var (name, plain) in AmbiguousNames)
        {
            var isHere = text[at..].StartsWith(name, StringComparison.OrdinalIgnoreCase);
            if (!isHere || IsLetter(text, at + name.Length)) continue;
            return new(QuantityFaultKind.AmbiguousUnit, $"'{name}' does not say from where it counts", at, name.Length, plain);
        }

        return null;
    }

    public static QuantityFault NotANumber(ReadOnlySpan<char> text, int at)
    {
        if (at >= text.Length)
        {
            return at == 0 || text.IsWhiteSpace()
                ? new(QuantityFaultKind.Empty, "a quantity is due, such as 3/8 in", 0, 0)
                : new(QuantityFaultKind.NotANumber, "a number is missing at the end", at, 0);
        }

        if (text[at] == ',' && at + 1 < text.Length && char.IsAsciiDigit(text[at + 1])) return Comma(text, at);
        var word = WordAt(text, at);
        var found = word.Length > 0 ? word : text[at].ToString();
        return new(QuantityFaultKind.NotANumber, $"a number is due, not '{found}'", at, found.Length);
    }

    public static QuantityFault Wrong(Dimension due, Dimension given, ReadOnlySpan<char> text)
    {
        var trimmed = text.Trim();
        var (offset, length) = (text.IndexOf(trimmed, StringComparison.Ordinal), trimmed.Length);
        if (given is Dimension.Number or Dimension.Count)
        {
            var message = $"{Dimensions.Phrase(due)} is due, and '{trimmed}' has no unit ({UnitsOf(due)})";
            return new(QuantityFaultKind.MissingUnit, message, offset, length);
        }

        var isDifferenceOf = (due, given) is (Dimension.TemperatureDifference, Dimension.Temperature)
            or (Dimension.PressureDifference, Dimension.GaugePressure);
        var suggestion = isDifferenceOf ? $"{UnitTable.PrefixOf(due)} {trimmed}" : null;
        return new(QuantityFaultKind.WrongDimension, $"{Dimensions.Phrase(due)} is due, not {Dimensions.Phrase(given)}{AtSeaLevel(due, given, trimmed)}", offset, length, suggestion);
    }

    /// <summary>The usual units of a dimension, for a message.</summary>
    public static string UnitsOf(Dimension due) => string.Join(", ", UnitTable.For(due).Where(u => u.UsFrom is not null || u.SiFrom is not null).Take(6));

    // What a figure of the other kind would be, to be seen at once; never put in its place, since nobody said how high the gauge stands.
    private static string AtSeaLevel(Dimension due, Dimension given, ReadOnlySpan<char> text)
    {
        if ((due, given) is not ((Dimension.GaugePressure, Dimension.AbsolutePressure) or (Dimension.AbsolutePressure, Dimension.GaugePressure))) return "";
        if (!Quantity.TryRead(text, out var value, out _)) return "";
        var shift = due == Dimension.AbsolutePressure ? Atmosphere : -Atmosphere;
        var (from, to) = (value.Low + shift, value.High + shift);
        return $": one counts from the air around, the other from empty space; at sea level it would be {Quantity.Between(from, to, due).ToDisplay(UnitSystem.Us)}";
    }

    /// <summary>The word at a place: letters, digits and what units are joined with; empty if none starts there.</summary>
    public static string WordAt(ReadOnlySpan<char> text, int at)
    {
        var end = at;
        while (end < text.Length && (char.IsLetterOrDigit(text[end]) || (end > at && text[end] is '.' or '-' or '/' or '_' && IsLetter(text, end + 1)))) end++;
        return text[at..end].ToString();
    }

    private static bool IsLetter(ReadOnlySpan<char> text, int at) => at < text.Length && char.IsLetter(text[at]);

    private static QuantityFault Comma(ReadOnlySpan<char> text, int at)
    {
        var (start, end) = (at, at + 1);
        while (start > 0 && char.IsAsciiDigit(text[start - 1])) start--;
        while (end < text.Length && char.IsAsciiDigit(text[end])) end++;
        var number = text[start..end].ToString();
        var pointed = (start == at ? "0" : "") + number.Replace(',', '.');
        var isThousands = end - at == 4 && start < at;
        return new(
            QuantityFaultKind.Comma,
            isThousands ? "a number has a decimal point and no commas" : "a decimal is written with a point",
            start,
            number.Length,
            isThousands ? $"{number.Replace(",", "", StringComparison.Ordinal)} or {pointed}" : pointed);
    }
}
