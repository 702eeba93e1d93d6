using ProcedureRules.Plans;
using ProcedureRules.Quantities;

namespace ProcedureRules.Reports;

/// <summary>
/// What steps hang on that is not decided yet. A single condition stands at its step; several have a letter, since many steps share them.
/// </summary>
internal sealed class OpenConditions
{
    private readonly UnitSystem _units;
    private readonly List<string> _sets = [];

    public OpenConditions(Plan plan, UnitSystem units)
    {
        _units = units;
        foreach (var step in plan.Steps)
            if (step.Provisional.Count > 1 && !_sets.Contains(Text(step))) _sets.Add(Text(step));
    }

    /// <summary>The letters and what stands behind them.</summary>
    public void WriteLegend(ReportWriter writer)
    {
        if (_sets.Count == 0) return;
        writer.Heading("Not decided yet: some steps hang on this");
        for (var i = 0; i < _sets.Count; i++) writer.Write($"  {Letter(i)}  ", $"whether {_sets[i]}");
    }

    /// <summary>The line at a step.</summary>
    public void Write(PlanStep step, ReportWriter writer)
    {
        if (step.Provisional.Count == 1) writer.Write("      Only if ", Text(step), Tone.Question);
        else if (step.Provisional.Count > 1) writer.Write("      Only if needed: ", Letter(_sets.IndexOf(Text(step))), Tone.Question);
    }

    private string Text(PlanStep step) => string.Join("; whether ", step.Provisional.Select(settle => settle.In(_units)).Order(StringComparer.Ordinal));

    private static string Letter(int index) => index < 26 ? ((char)('A' + index)).ToString() : $"A{index}";
}
