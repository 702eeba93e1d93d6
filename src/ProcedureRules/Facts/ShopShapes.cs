using ProcedureRules.Shapes;
using static ProcedureRules.Packs.Forms;
using static ProcedureRules.Shapes.Field;

namespace ProcedureRules.Facts;

/// <summary>What a shop file looks like.</summary>
internal static class ShopShapes
{
    /// <summary>The most people that a shop file can speak of.</summary>
    public const int MostPeople = 20;

    /// <summary>The days of the week by their names, in the order of <see cref="DayOfWeek"/>.</summary>
    public static readonly IReadOnlyList<string> Days = ["sunday", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday"];

    private static readonly Shape Period = new TextShape
    {
        Format = "period",
        Pattern = new TextPattern("([01]?[0-9]|2[0-3]):[0-5][0-9] *- *(([01]?[0-9]|2[0-3]):[0-5][0-9]|24:00)", "two times of day with a dash between them, such as 8:00-17:00"),
        Examples = ["8:00-17:00"],
    };

    private static readonly Shape Periods = new OneOfShape("a period such as 8:00-17:00, or a list of them", new Alternative(Period), new Alternative(ListOf(Period, 1)));

    private static readonly MapShape Hours = new(
        "the hours of a shop",
        [.. Days.Skip(1).Append(Days[0]).Select(day => Optional(day, Periods, "When it is open; left out: closed."))]);

    private static readonly Shape Date = new TextShape
    {
        Format = "date",
        Pattern = new TextPattern("[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])", "year-month-day, such as 2026-12-25"),
        Examples = ["2026-12-25"],
    };

    /// <summary>A whole shop file.</summary>
    public static readonly MapShape Shop = new(
        "a shop",
        Required("shop", Text, "What it is, one line."),
        Optional("technicians", new IntegerShape(1, MostPeople), "How many technicians work on the vehicle.", "1"),
        Optional("hours", new RefShape("hours", () => Hours), "When it is open.", "Monday to Friday, 8:00-17:00"),
        Optional("closed", ListOf(Date), "Days on which it is closed all the same."),
        Optional("places", ByName(new IntegerShape(1, MostPeople)), "How many people fit into a place at a time; a place that is left out holds all."),
        Optional("alone", ListOf(Name), "The energies beside which nobody else works.", "all"));
}
