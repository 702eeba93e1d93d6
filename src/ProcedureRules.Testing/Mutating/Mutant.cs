using ProcedureRules.Diagnostics;

namespace ProcedureRules.Testing.Mutating;

/// <summary>A rule with one thing changed.</summary>
/// <param name="Id">Its name, the same as long as the packs are.</param>
/// <param name="Pack">The pack.</param>
/// <param name="Rule">The rule.</param>
/// <param name="Span">Where what is changed is written.</param>
/// <param name="Change">What is changed.</param>
/// <param name="Due">The scenario that would notice.</param>
/// <param name="Edit">The change.</param>
internal sealed record Mutant(string Id, string Pack, string Rule, SourceSpan Span, string Change, string Due, RuleEdit Edit)
{
    /// <summary>What came of it.</summary>
    public MutantResult Result(MutantOutcome outcome, string? by) => new(Id, Pack, Rule, Span, Change, Due, outcome, by);
}
