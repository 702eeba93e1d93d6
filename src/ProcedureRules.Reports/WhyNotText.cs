using ProcedureRules.Explaining;
using ProcedureRules.Logic;
using ProcedureRules.Quantities;

namespace ProcedureRules.Reports;

/// <summary>Why something is not in a plan, as text.</summary>
public static class WhyNotText
{
    /// <summary>The lines of the report.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="units">The units of figures.</param>
    /// <param name="width">Columns, at least 40.</param>
    public static IReadOnlyList<ReportLine> Lines(WhyNotAnswer answer, UnitSystem units, int width = 80)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var writer = new ReportWriter(Math.Max(40, width));
        writer.Write("", $"Not in the plan: {answer.Item.In(units)}", Tone.Heading);
        writer.Blank();
        foreach (var way in answer.NotTaken) writer.Write("Another way: ", way.In(units));
        foreach (var reason in answer.ForbiddenBy) writer.Write("Forbidden: ", $"{reason.Text.In(units)} [{reason.Rule}; pack {reason.Pack}; basis: {reason.Basis}]", Tone.Care);
        if (answer.Rules.Count == 0) writer.Write("", "No rule of the packs would give it.");
        // Where the work itself is wanted and only this way of it is not, the rules that want it say nothing of the way.
        foreach (var rule in answer.Rules.Where(rule => answer.NotTaken.Count == 0 || rule.Missing > 0)) Write(rule, units, writer);
        Change(answer, units, writer);
        return writer.Lines;
    }

    private static void Write(WhyNotRule rule, UnitSystem units, ReportWriter writer)
    {
        writer.Write("- ", $"[{rule.Rule}; pack {rule.Pack}{(string.IsNullOrEmpty(rule.Basis) ? "" : $"; basis: {rule.Basis}")}]", Tone.Quiet);
        foreach (var condition in rule.Conditions)
        {
            var verdict = condition.Holds switch { Truth.Yes => "yes", Truth.No => "NO", _ => "not known" };
            writer.Write("    - ", $"{condition.Text.In(units)}: {verdict}", condition.Holds == Truth.Yes ? Tone.Plain : Tone.Question);
            foreach (var read in condition.Read) writer.Write("      - ", read.In(units), Tone.Quiet);
        }
    }

    private static string None(WhyNotAnswer answer) => answer.Search switch
    {
        ChangeSearch.Impossible when answer.NotTaken.Count > 0 => "No change of facts does, whatever they are: another way stays the better one, or it may not be done. Where the choice is open, --choose takes it.",
        ChangeSearch.Impossible => "No change of facts does, whatever they are: it would take other parts, relations or jobs.",
        ChangeSearch.Unfinished => $"Nothing was found in {answer.Tried} changes; the search was not finished.",
        _ => $"No one fact, and no two, of those its rules rest on ({answer.Tried} changes were tried).",
    };

    private static void Change(WhyNotAnswer answer, UnitSystem units, ReportWriter writer)
    {
        writer.Heading("What would bring it in");
        foreach (var fact in answer.Change) writer.Write("  ", $"{fact.Id}: {fact.Text.In(units)}", Tone.Question);
        if (answer.Change.Count > 0)
            writer.Write("  ", $"See it with: what-if {string.Join(' ', answer.Change.Select(fact => $"\"{fact.Statement}\""))}", Tone.Quiet);
        else writer.Write("  ", None(answer));
    }
}
