using ProcedureRules.Inference;
using ProcedureRules.Language;

namespace ProcedureRules.Tests.Inference;

/// <summary>Records as lines of text, so that two ways to reach them can be compared and a difference read.</summary>
internal static class Described
{
    public static IReadOnlyList<string> Records(InferenceResult result) => [.. result.Records.Select(Of)];

    public static string Of(Record record) =>
        $"{record.Mechanism} {record.Rule?.Name}{Of(record.Binding)}: {string.Join(" & ", record.Premises.Select(Of).Order(StringComparer.Ordinal))}"
        + $" => {string.Join(" & ", record.Effects.Select(effect => effect.Atom is null ? effect.Conclusion!.GetType().Name : Of(effect.Atom)))}";

    public static string Of(Binding binding) => $"[{string.Join(", ", Enumerable.Range(0, binding.Count).Select(slot => binding[slot]))}]";

    public static string Of(Atom atom) => atom switch
    {
        Atom.Exists(var part) => $"exists({part})",
        Atom.Related(var relation, var a, var b) => $"{relation}({a}, {b})",
        Atom.Asked(var request) => $"asked({request.Job}, {request.On})",
        Atom.Occurs(var step) => $"occurs({step})",
        Atom.Wanted(var part, var aspect, var states) => $"wanted({new GroundState(part, aspect, states)})",
        Atom.Open(var choice) => $"open({Of(choice)})",
        Atom.Chosen(var choice, var option) => $"chosen({Of(choice)}, {option})",
        _ => throw new ArgumentOutOfRangeException(nameof(atom), atom, "not seen outside inference"),
    };

    private static string Of(ChoiceKey choice) => choice switch
    {
        ChoiceKey.OfRule(var rule, var binding, var number) => $"{rule.Name}{Of(binding)}#{number}",
        ChoiceKey.OfWays(var part, var aspect, var states) => $"ways to {new GroundState(part, aspect, states)}",
        _ => "",
    };
}
