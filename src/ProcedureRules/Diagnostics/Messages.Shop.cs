namespace ProcedureRules.Diagnostics;

/// <summary>PR058x: shop files.</summary>
internal static partial class Messages
{
    private static readonly DiagnosticCode HoursCode = Declare(
        "PR0580",
        "Opening hours that cannot be",
        "Write each day's periods in order, none beginning before the last is over, and leave the shop open some day of the week.",
        "hours: {monday: 17:00-8:00}");

    private static readonly DiagnosticCode NoSuchDayCode = Declare(
        "PR0581",
        "A day that is not in the calendar",
        "Write year-month-day.",
        "closed: [2026-02-30]");

    private static readonly DiagnosticCode UnknownOfShopCode = Declare(
        "PR0582",
        "A place or an energy that no pack names",
        "Correct the spelling; packs list them under 'places' and 'energies'.",
        "places: {benhc: 1}");

    public static Diagnostic HoursOutOfOrder(SourceSpan span, string day) =>
        HoursCode.At(span, $"the hours of {day} are out of order: a period ends after it begins, and the next begins after that");

    public static Diagnostic NeverOpen(SourceSpan span) => HoursCode.At(span, "the shop is never open");

    public static Diagnostic NoSuchDay(SourceSpan span, string date) => NoSuchDayCode.At(span, $"there is no day {Quote(date)}");

    public static Diagnostic UnknownOfShop(SourceSpan span, string sort, string name, IEnumerable<string> known) =>
        Misspelt(UnknownOfShopCode, span, $"no pack names the {sort} {Quote(name)}", name, known);
}
