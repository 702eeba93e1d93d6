using ProcedureRules.Plans;
using ProcedureRules.Quantities;

namespace ProcedureRules.Reports;

/// <summary>
/// What steps hang on that is not decided yet. A single condition stands at its step; several have a letter, since many steps share them.
/// </summary>
internal sealed class OpenConditions
{
    /// <summary>The heading of the legend.</summary>
    public const string LegendTitle = "Not decided yet: some steps hang on this";

    private readonly UnitSystem _units;
    private readonly List<string> _sets = [];

    public OpenConditions(Plan plan, UnitSystem units)
    {
        _units = units;
        foreach (var step in plan.Steps)
            if (step.Provisional.Count > 1 && !_sets.Contains(Text(step))) _sets.Add(Text(step));
    }

    /// <summary>The letters and what stands behind them.</summary>
    public IReadOnlyList<(string Letter, string Text)> Legend => [.. _sets.Select((set, i) => (Letter(i), $"whether {set}"))];

    /// <summary>What a step hangs on; null where it is sure.</summary>
    public string? Of(PlanStep step) => step.Provisional.Count switch
    {
        0 => null,
        1 => $"Only if {Text(step)}",
        _ => $"Only if needed: {Letter(_sets.IndexOf(Text(step)))}",
    };

    /// <summary>Writes the legend.</summary>
    public void WriteLegend(ReportWriter writer)
    {
        if (_sets.Count == 0) return;
        writer.Heading(LegendTitle);
        foreach (var (letter, text) in Legend) writer.Write($"  {letter}  ", text);
    }

    private string Text(PlanStep step) => string.Join("; whether ", step.Provisional.Select(settle => settle.In(_units)).Order(StringComparer.Ordinal));

    private static string Letter(int index) => index < 26 ? ((char)('A' + index)).ToString() : $"A{index}";
}
