using ProcedureRules.Plans;
using ProcedureRules.Quantities;

namespace ProcedureRules.Reports;

/// <summary>What the findings say of causes, and what would tell those apart that are left.</summary>
internal static class FindingsText
{
    public static void Write(Plan plan, UnitSystem units, ReportWriter writer, bool withBasis = false)
    {
        Findings(plan, units, writer, withBasis);
        Checks(plan, units, writer);
    }

    private static void Findings(Plan plan, UnitSystem units, ReportWriter writer, bool withBasis)
    {
        if (plan.Findings.Count == 0) return;
        writer.Heading("What the findings say");
        var unlikely = plan.Findings.Where(PlanWords.IsUnlikely).ToList();
        foreach (var finding in plan.Findings.Except(unlikely))
        {
            writer.Write("  ", $"{finding.Text.In(units)}: {PlanWords.Verdict(finding)}");
            foreach (var reason in finding.For) writer.Write("      for: ", Words(reason), Tone.Quiet);
            foreach (var reason in finding.Against) writer.Write("      against: ", Words(reason), Tone.Quiet);
        }

        if (unlikely.Count > 0) writer.Write("  ", "Not ruled out, but nothing speaks for it and something against:");
        foreach (var finding in unlikely) writer.Write("    - ", finding.Text.In(units), Tone.Quiet);

        string Words(Reason reason) => withBasis ? $"{reason.Text.In(units)} [{reason.Basis}]" : reason.Text.In(units);
    }

    private static void Checks(Plan plan, UnitSystem units, ReportWriter writer)
    {
        if (plan.TellingChecks.Count == 0) return;
        writer.Heading("What would tell them apart, the least work first");
        var number = 0;
        foreach (var check in plan.TellingChecks)
        {
            writer.Write($"  {++number,2}. ", check.Text.In(units) + (check.Labour.High > 0 ? $" ({check.Labour.ToDisplay(units)})" : ""), Tone.Question);
            if (check.How is { } how) writer.Write("      ", $"How: {how.In(units)}");
            foreach (var work in check.Work) writer.Write("      before it: ", work.In(units), Tone.Quiet);
            foreach (var outcome in check.Answers.GroupBy(answer => PlanWords.Outcome(answer, units)))
                writer.Write("      ", $"If {string.Join(", or ", outcome.Select(answer => answer.Answer.In(units)))}: {outcome.Key}", Tone.Quiet);
            writer.Write("      ", $"Answer with --set \"{check.Id}=...\"", Tone.Quiet);
        }
    }
}
