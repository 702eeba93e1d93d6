using ProcedureRules.Explaining;
using ProcedureRules.Quantities;

namespace ProcedureRules.Reports;

/// <summary>Explanations as text: each line rests on those set in below it.</summary>
public static class WhyText
{
    private const int MostIndent = 36;

    /// <summary>The lines of the full explanations.</summary>
    /// <param name="answers">The explanations.</param>
    /// <param name="units">The units of figures.</param>
    /// <param name="width">Columns, at least 40.</param>
    public static IReadOnlyList<ReportLine> Lines(IReadOnlyList<WhyAnswer> answers, UnitSystem units, int width = 80)
    {
        ArgumentNullException.ThrowIfNull(answers);
        var writer = new ReportWriter(Math.Max(40, width));
        foreach (var answer in answers)
        {
            writer.Blank();
            Write(answer.Tree, 0, units, writer);
        }
        return writer.Lines;
    }

    /// <summary>The lines of the explanations in short: what says so, from what, and for what.</summary>
    /// <param name="answers">The explanations.</param>
    /// <param name="units">The units of figures.</param>
    /// <param name="width">Columns, at least 40.</param>
    public static IReadOnlyList<ReportLine> ShortLines(IReadOnlyList<WhyAnswer> answers, UnitSystem units, int width = 80)
    {
        ArgumentNullException.ThrowIfNull(answers);
        var writer = new ReportWriter(Math.Max(40, width));
        foreach (var answer in answers)
        {
            var told = answer.InShort;
            writer.Blank();
            writer.Write("", answer.Item.Text.In(units), Tone.Heading);
            foreach (var reason in told.Reasons) writer.Write("  because: ", Sentence(reason, units));
            foreach (var fact in told.Facts) writer.Write("  known: ", fact.Text.In(units));
            foreach (var asking in told.For) writer.Write("  for: ", asking.Text.In(units));
        }
        return writer.Lines;
    }

    private static string Sentence(WhyNode reason, UnitSystem units)
    {
        var text = reason.Text.In(units);
        return reason.Rule is null ? text : text.Length == 0 ? $"[{reason.Rule}]" : $"{text} [{reason.Rule}]";
    }

    private static void Write(WhyNode node, int depth, UnitSystem units, ReportWriter writer)
    {
        var lead = new string(' ', Math.Min(depth * 2, MostIndent)) + (depth == 0 ? "" : "- ");
        var source = node.Rule is { } rule ? $"[{rule}; pack {node.Pack}{(string.IsNullOrEmpty(node.Basis) ? "" : $"; basis: {node.Basis}")}]" : null;
        var text = node.Text.In(units);
        writer.Write(lead, text.Length > 0 ? text : source ?? "", depth == 0 ? Tone.Heading : Tone.Plain);
        if (source is not null && text.Length > 0) writer.Write(new string(' ', lead.Length), source, Tone.Quiet);
        foreach (var because in node.Because) Write(because, depth + 1, units, writer);
    }
}
