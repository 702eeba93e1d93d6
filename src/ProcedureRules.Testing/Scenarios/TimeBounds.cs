using ProcedureRules.Diagnostics;
using ProcedureRules.Quantities;
using ProcedureRules.Yaml;

namespace ProcedureRules.Testing.Scenarios;

/// <summary>Reads what a time is expected to be: <c>3..15 h</c>, <c>at least 30 min</c>, <c>at most 2 d</c>.</summary>
internal static class TimeBounds
{
    private const string Least = "at least ";
    private const string Most = "at most ";

    /// <summary>The bounds; null after a complaint.</summary>
    public static Quantity? Read(YamlScalar text, DiagnosticBag bag)
    {
        var lead = new[] { Least, Most }.FirstOrDefault(lead => text.Text.StartsWith(lead, StringComparison.Ordinal)) ?? "";
        if (!Quantity.TryRead(text.Text.AsSpan(lead.Length), Dimension.Duration, out var written, out var fault))
        {
            bag.Add(Messages.DurationForm(text.SpanAt(lead.Length + fault.Offset, fault.Length), text.Text, fault.Message));
            return null;
        }

        return lead switch
        {
            Least => Quantity.Between(written.Low, double.PositiveInfinity, Dimension.Duration),
            Most => Quantity.Between(double.NegativeInfinity, written.High, Dimension.Duration),
            _ => written,
        };
    }
}
