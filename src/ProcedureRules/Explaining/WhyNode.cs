using ProcedureRules.Plans;

namespace ProcedureRules.Explaining;

/// <summary>One sentence of an explanation and what it rests on, down to what was stated and what packs declare.</summary>
/// <param name="Sort">What it is.</param>
/// <param name="Text">The sentence.</param>
/// <param name="Because">What it rests on; empty for what was stated or declared, and where the same stands above.</param>
public sealed record WhyNode(WhyNodeSort Sort, Wording Text, IReadOnlyList<WhyNode> Because)
{
    /// <summary>The rule that says so; null for what was stated and for what planning itself adds.</summary>
    public string? Rule { get; init; }

    /// <summary>The rule's pack.</summary>
    public string? Pack { get; init; }

    /// <summary>Where the rule's knowledge comes from.</summary>
    public string? Basis { get; init; }

    /// <summary>The id of a step, a fact, a relation or a part, as <c>why</c> and <c>--set</c> take it.</summary>
    public string? Id { get; init; }

    internal static WhyNode Leaf(WhyNodeSort sort, Wording text, string? id = null) => new(sort, text, []) { Id = id };

    internal static WhyNode Leaf(WhyNodeSort sort, string text, string? id = null) => Leaf(sort, new Wording(text), id);

    /// <summary>The same, resting on more.</summary>
    internal WhyNode And(IEnumerable<WhyNode> more) => this with { Because = [.. Because, .. more] };
}
