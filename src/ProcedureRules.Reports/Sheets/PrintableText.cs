using System.Text;

namespace ProcedureRules.Reports.Sheets;

/// <summary>Text without the characters that no page may hold: they print as nothing. Blanks and line ends are single blanks.</summary>
internal static class PrintableText
{
    public static string Of(string text) => string.Join(
        ' ', string.Concat(text.EnumerateRunes().Where(MayBePrinted).Select(rune => rune.ToString())).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static bool MayBePrinted(Rune rune) => Rune.IsWhiteSpace(rune) || (!Rune.IsControl(rune) && rune.Value is not (0xFFFE or 0xFFFF));
}
