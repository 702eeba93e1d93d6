using System.Globalization;

namespace ProcedureRules.Scheduling;

/// <summary>When a job may begin, as people write it: <c>2026-11-25T08:00</c>, <c>2026-11-25 08:00</c>, <c>2026-11-25</c>.</summary>
public static class JobStart
{
    private static readonly string[] Forms = ["yyyy-MM-dd'T'HH:mm", "yyyy-MM-dd HH:mm", "yyyy-MM-dd"];

    /// <summary>The moment; null where the text is none. A day without a time begins at midnight.</summary>
    /// <param name="text">The text.</param>
    public static DateTime? Read(string text) =>
        DateTime.TryParseExact(text, Forms, CultureInfo.InvariantCulture, DateTimeStyles.None, out var moment) ? moment : null;
}
