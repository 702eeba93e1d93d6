using System.Globalization;
using System.Text;
using ProcedureRules.Spelling;

namespace ProcedureRules.Diagnostics;

/// <summary>
/// Every message the library can give, one method each, so that wording stays uniform. One file per area; a code is
/// declared just above the methods that use it. Methods take spans and texts only, never the types of later folders.
/// </summary>
internal static partial class Messages
{
    private const int MaxQuoted = 60;

    // Field initialisers of all the partial files run before this body, in whatever order of files; hence the sorting.
    static Messages() => Codes = [.. Declared.List.OrderBy(code => code.Code, StringComparer.Ordinal)];

    /// <summary>All declared codes, in order.</summary>
    public static IReadOnlyList<DiagnosticCode> Codes { get; }

    /// <summary>Puts words of a user in quotes, on one line and of bearable length.</summary>
    public static string Quote(string text)
    {
        var quoted = new StringBuilder("'");
        foreach (var c in text.Length > MaxQuoted ? text.AsSpan(0, MaxQuoted) : text)
        {
            switch (c)
            {
                case '\n': quoted.Append("\\n"); break;
                case '\r': quoted.Append("\\r"); break;
                case '\t': quoted.Append("\\t"); break;
                case var _ when char.IsControl(c) || char.IsSurrogate(c): quoted.Append(CodePoint(c)); break;
                default: quoted.Append(c); break;
            }
        }

        return quoted.Append(text.Length > MaxQuoted ? "...'" : "'").ToString();
    }

    /// <summary>Joins alternatives as a sentence does: <c>'a', 'b' or 'c'</c>; a long list is cut short.</summary>
    public static string Either(IEnumerable<string> words, int most = 8)
    {
        var all = words.Select(Quote).ToList();
        if (all.Count > most)
            return $"{string.Join(", ", all.Take(most))} or {Count(all.Count - most, "other")}";

        return all.Count < 2 ? string.Concat(all) : $"{string.Join(", ", all.SkipLast(1))} or {all[^1]}";
    }

    /// <summary>A number with its noun, in the plural where due.</summary>
    public static string Count(int number, string noun) =>
        string.Create(CultureInfo.InvariantCulture, $"{number} {noun}{(number == 1 ? "" : "s")}");

    /// <summary>A message about a name that is not known, with the nearest right spelling where there is one.</summary>
    public static Diagnostic Misspelt(
        DiagnosticCode code, SourceSpan span, string message, string wrong, IEnumerable<string> candidates)
    {
        var nearest = NearestName.Find(wrong, candidates);
        var whole = nearest is null ? message : $"{message}; did you mean {Quote(nearest)}?";
        return code.At(span, whole) with { Suggestion = nearest };
    }

    private static DiagnosticCode Declare(string code, string title, string cure, string example)
    {
        var declared = new DiagnosticCode(code, title, cure, example);
        Declared.List.Add(declared);
        return declared;
    }

    private static string CodePoint(char c) => string.Create(CultureInfo.InvariantCulture, $"U+{(int)c:X4}");

    // A class of its own, so that the list exists before the first field of any partial file asks for it.
    private static class Declared
    {
        public static readonly List<DiagnosticCode> List = [];
    }
}
