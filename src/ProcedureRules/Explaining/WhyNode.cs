using ProcedureRules.Planning;

namespace ProcedureRules.Explaining;

/// <summary>One sentence of an explanation and what it rests on, down to what was stated.</summary>
/// <param name="Text">The sentence.</param>
/// <param name="Rule">The rule that says so; null for what was stated and for what planning itself adds.</param>
/// <param name="Pack">The rule's pack.</param>
/// <param name="Basis">Where the rule's knowledge comes from.</param>
/// <param name="Because">What it rests on; empty for what was stated, and where the same stands above.</param>
public sealed record WhyNode(Wording Text, string? Rule, string? Pack, string? Basis, IReadOnlyList<WhyNode> Because)
{
    internal static WhyNode Stated(Wording text) => new(text, null, null, null, []);
}
