namespace ProcedureRules.Diagnostics;

/// <summary>PR065x: the network of what is believed.</summary>
internal static partial class Messages
{
    private static readonly DiagnosticCode RingThroughConditionCode = Declare(
        "PR0650",
        "A rule reads what hangs on its own conclusion",
        "Let one of the rules read something that the others do not conclude: a fact that is stated, or a relation that binds instead of a condition.",
        "for: {a: engine_mount, b: engine_mount}\nwhen: [ \"covers(a, b)\", a.condition is torn ]\nthen: [{set: {b.condition: torn}}]");

    public static Diagnostic RingThroughCondition(SourceSpan condition, string read, IReadOnlyList<(string Name, SourceSpan Span)> rules)
    {
        var names = string.Join(", ", rules.Select(rule => Quote(rule.Name)));
        var message = rules.Count == 1
            ? $"the rule {names} reads {Quote(read)}, which hangs on what it concludes"
            : $"the rules {names} form a ring: {Quote(read)} is read by one of them and hangs on what they conclude";
        var diagnostic = RingThroughConditionCode.At(condition, message);
        return rules.Aggregate(diagnostic, (noted, rule) => noted.Note($"{Quote(rule.Name)} takes part", rule.Span));
    }
}
