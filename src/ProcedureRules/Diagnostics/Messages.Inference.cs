namespace ProcedureRules.Diagnostics;

/// <summary>PR06xx: inference and its budget.</summary>
internal static partial class Messages
{
    private static readonly DiagnosticCode NotSettledCode = Declare(
        "PR0601",
        "The rules conclude more than the budget allows",
        "Look at the rules that are named: one that binds its variables to everything needs a condition that ties them together.",
        "for: {a: part, b: part, c: part}\nwhen: [ \"covers(a, b)\", \"covers(b, c)\" ]");

    public static Diagnostic NotSettled(int budget, IReadOnlyList<(string Name, int Count)> busiest)
    {
        var message = $"the rules conclude more than {Count(budget, "record")}, so nothing is planned on them";
        return busiest.Aggregate(
            NotSettledCode.At(SourceSpan.None, message),
            (diagnostic, rule) => diagnostic.Note($"{Quote(rule.Name)} has {Count(rule.Count, "instance")}"));
    }
}
