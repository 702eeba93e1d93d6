using ProcedureRules.Explaining;
using ProcedureRules.Quantities;

namespace ProcedureRules.Reports;

/// <summary>Explanations as text: each line rests on those set in below it.</summary>
public static class WhyText
{
    private const int MostIndent = 36;

    /// <summary>The lines of the report.</summary>
    /// <param name="explanations">The explanations.</param>
    /// <param name="units">The units of figures.</param>
    /// <param name="width">Columns, at least 40.</param>
    public static IReadOnlyList<ReportLine> Lines(IReadOnlyList<WhyNode> explanations, UnitSystem units, int width = 80)
    {
        var writer = new ReportWriter(Math.Max(40, width));
        foreach (var explanation in explanations)
        {
            writer.Blank();
            Write(explanation, 0, units, writer);
        }
        return writer.Lines;
    }

    private static void Write(WhyNode node, int depth, UnitSystem units, ReportWriter writer)
    {
        var lead = new string(' ', Math.Min(depth * 2, MostIndent)) + (depth == 0 ? "" : "- ");
        writer.Write(lead, node.Text.In(units), depth == 0 ? Tone.Heading : Tone.Plain);
        if (node.Rule is { } rule)
            writer.Write(new string(' ', lead.Length), $"[{rule}; pack {node.Pack}{(string.IsNullOrEmpty(node.Basis) ? "" : $"; basis: {node.Basis}")}]", Tone.Quiet);
        foreach (var because in node.Because) Write(because, depth + 1, units, writer);
    }
}
