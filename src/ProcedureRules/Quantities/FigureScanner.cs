using System.Globalization;
using System.Numerics;

namespace ProcedureRules.Quantities;

/// <summary>Reads one unsigned figure: decimal, fraction, or whole number and fraction.</summary>
internal static class FigureScanner
{
    private const int MostDigits = 60;
    private const int GreatestExponent = 400;

    /// <summary>Whether a figure starts here.</summary>
    public static bool StartsAt(ReadOnlySpan<char> text, int at) =>
        IsDigit(text, at) || (at < text.Length && text[at] == '.' && IsDigit(text, at + 1));

    /// <summary>Reads a figure and moves past it. The caller has made sure that one starts here.</summary>
    public static bool TryScan(ReadOnlySpan<char> text, ref int at, out ExactNumber figure, out QuantityFault? fault)
    {
        var start = at;
        figure = default;
        if (!TryDecimal(text, ref at, out var first, out var isWhole, out fault)) return false;
        if (!isWhole)
        {
            figure = first;
            return true;
        }

        if (IsStroke(text, at)) return TryFraction(text, start, ref at, first, out figure, out fault);

        var next = at;
        while (next < text.Length && char.IsWhiteSpace(text[next])) next++;
        if (next > at && IsDigit(text, next) && EndsInFraction(text, next))
        {
            var fractionStart = next;
            TryDecimal(text, ref next, out var above, out _, out fault);
            if (fault is not null || !TryFraction(text, fractionStart, ref next, above, out var part, out fault)) return false;
            at = next;
            figure = first + part;
            if (part < 1) return true;
            fault = new(QuantityFaultKind.BadFraction, "the fraction after a whole number is less than one", fractionStart, next - fractionStart);
            return false;
        }

        figure = first;
        return true;
    }

    private static bool TryDecimal(ReadOnlySpan<char> text, ref int at, out ExactNumber figure, out bool isWhole, out QuantityFault? fault)
    {
        var start = at;
        (figure, isWhole, fault) = (default, true, null);
        while (IsDigit(text, at)) at++;
        var digits = text[start..at].ToString();
        var exponent = 0;
        if (at < text.Length && text[at] == '.' && IsDigit(text, at + 1))
        {
            isWhole = false;
            var point = ++at;
            while (IsDigit(text, at)) at++;
            digits += text[point..at].ToString();
            exponent = point - at;
        }

        if (digits.Length > MostDigits)
        {
            fault = new(QuantityFaultKind.TooLarge, $"a number has at most {MostDigits} digits", start, at - start);
            return false;
        }

        if (HasExponent(text, at, out var digitsAt))
        {
            isWhole = false;
            var end = digitsAt;
            while (IsDigit(text, end)) end++;
            if (!int.TryParse(text[digitsAt..end], NumberStyles.None, CultureInfo.InvariantCulture, out var power) || power > GreatestExponent)
            {
                fault = new(QuantityFaultKind.TooLarge, "the number is beyond every measure", start, end - start);
                return false;
            }

            exponent += text[at + 1] == '-' ? -power : power;
            at = end;
        }

        figure = ExactNumber.Scaled(BigInteger.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture), exponent);
        return true;
    }

    private static bool TryFraction(
        ReadOnlySpan<char> text, int start, ref int at, ExactNumber above, out ExactNumber figure, out QuantityFault? fault)
    {
        at++;
        figure = default;
        if (!TryDecimal(text, ref at, out var below, out var isWhole, out fault)) return false;
        if (isWhole && below.Sign > 0)
        {
            figure = above / below;
            return true;
        }

        var message = isWhole ? "a fraction cannot have zero below its stroke" : "a fraction has whole numbers above and below its stroke";
        fault = new(QuantityFaultKind.BadFraction, message, start, at - start);
        return false;
    }

    private static bool EndsInFraction(ReadOnlySpan<char> text, int at)
    {
        while (IsDigit(text, at)) at++;
        return IsStroke(text, at);
    }

    private static bool IsStroke(ReadOnlySpan<char> text, int at) =>
        at < text.Length && text[at] is '/' or '\u2044' && IsDigit(text, at + 1);

    private static bool HasExponent(ReadOnlySpan<char> text, int at, out int digitsAt)
    {
        digitsAt = at + 1;
        if (at >= text.Length || text[at] is not ('e' or 'E')) return false;
        if (digitsAt < text.Length && text[digitsAt] is '-' or '+') digitsAt++;
        return IsDigit(text, digitsAt);
    }

    private static bool IsDigit(ReadOnlySpan<char> text, int at) => at < text.Length && char.IsAsciiDigit(text[at]);
}
