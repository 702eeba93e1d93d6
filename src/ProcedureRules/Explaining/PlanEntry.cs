using ProcedureRules.Plans;

namespace ProcedureRules.Explaining;

/// <summary>One thing that a plan says: a step, an order of two steps, a caution, a question, a tool and so on.</summary>
/// <param name="Sort">What it is.</param>
/// <param name="Id">What <c>why</c> takes for it: an id where it has one, else its words.</param>
/// <param name="Step">The id of the step it stands at; null where it is about the whole.</param>
/// <param name="Text">Its words.</param>
public sealed record PlanEntry(PlanItemSort Sort, string Id, string? Step, Wording Text)
{
    /// <summary>How it is explained.</summary>
    internal Func<ItemTrees, IEnumerable<WhyNode>> Grounds { get; init; } = _ => [];

    /// <summary>Further words by which it is found.</summary>
    internal IReadOnlyList<Wording> Also { get; init; } = [];

    /// <summary>What makes it the same in two plans.</summary>
    internal (PlanItemSort Sort, string? Step, string Text) Key => (Sort, Step, Text.ToString());

    internal bool Has(string words) => Text.ToString().Contains(words, StringComparison.OrdinalIgnoreCase)
        || Also.Any(text => text.ToString().Contains(words, StringComparison.OrdinalIgnoreCase));
}
