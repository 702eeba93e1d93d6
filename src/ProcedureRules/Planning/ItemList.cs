using ProcedureRules.Plans;

namespace ProcedureRules.Planning;

/// <summary>Tools, supplies or offers of a plan: one line a text, with the steps it is for.</summary>
internal sealed class ItemList
{
    private readonly Dictionary<string, Line> _lines = [];

    public void Add(Wording text, string? step, bool isSure, Reason? reason)
    {
        var key = text.ToString();
        if (!_lines.TryGetValue(key, out var line)) _lines[key] = line = new Line(text);
        if (step is not null && !line.Steps.Contains(step)) line.Steps.Add(step);
        line.IsSure |= isSure;
        line.Reason ??= reason;
    }

    public IReadOnlyList<PlanItem> ToItems() =>
        [.. _lines.OrderBy(entry => entry.Key, StringComparer.Ordinal)
            .Select(entry => new PlanItem(entry.Value.Text, entry.Value.Steps, entry.Value.IsSure, entry.Value.Reason))];

    private sealed class Line(Wording text)
    {
        public Wording Text { get; } = text;
        public List<string> Steps { get; } = [];
        public bool IsSure { get; set; }
        public Reason? Reason { get; set; }
    }
}
