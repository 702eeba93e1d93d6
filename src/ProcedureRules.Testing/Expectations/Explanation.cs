using ProcedureRules.Quantities;
using ProcedureRules.Reports;

namespace ProcedureRules.Testing.Expectations;

/// <summary>The why or why not that explains what came, cut to what is read at a glance.</summary>
internal static class Explanation
{
    private const int Width = 110;
    private const int MostLines = 16;

    /// <summary>Why something stands in the plan.</summary>
    public static IReadOnlyList<string> Why(Outcome outcome, string item) =>
        Cut(WhyText.Lines([.. Explaining.Why.Of(outcome.Plan, item).Take(1)], UnitSystem.Us, Width));

    /// <summary>Why something does not stand in the plan.</summary>
    public static IReadOnlyList<string> WhyNot(Outcome outcome, string item) =>
        Explaining.WhyNot.Of(outcome.Plan, outcome.Beliefs, item) is { } answer ? Cut(WhyNotText.Lines(answer, UnitSystem.Us, Width)) : [];

    private static List<string> Cut(IReadOnlyList<ReportLine> lines)
    {
        var texts = lines.Select(line => line.Text).Where(text => text.Length > 0).ToList();
        return texts.Count <= MostLines ? texts : [.. texts.Take(MostLines), "(and so on)"];
    }
}
