using ProcedureRules.Language;

namespace ProcedureRules.Testing.Mutating;

/// <summary>Copies of compiled rules with something left out.</summary>
internal static class RuleCopies
{
    /// <summary>The rules with some of them replaced.</summary>
    public static RuleBase With(RuleBase rules, IReadOnlyList<(CompiledRule Old, CompiledRule New)> replaced) =>
        Only(rules, [.. rules.Rules.Select(rule => replaced.FirstOrDefault(pair => ReferenceEquals(pair.Old, rule)).New ?? rule)]);

    /// <summary>Some rules, with the vocabulary and all else of others.</summary>
    public static RuleBase Only(RuleBase rules, IReadOnlyList<CompiledRule> only) => new()
    {
        Packs = rules.Packs,
        Vocabulary = rules.Vocabulary,
        Rules = only,
        AuthoredCount = rules.AuthoredCount,
        Instructions = rules.Instructions,
        Whiles = rules.Whiles,
        Questions = rules.Questions,
        WaysToFind = rules.WaysToFind,
        Causes = rules.Causes,
        Jobs = rules.Jobs,
        Relations = rules.Relations,
    };

    /// <summary>A rule without one of the conditions that bind.</summary>
    public static CompiledRule WithoutPattern(CompiledRule rule, Pattern pattern) => Copy(rule, [.. rule.Patterns.Where(other => !ReferenceEquals(other, pattern))], rule.AtStart);

    /// <summary>A rule without one of the states at the start.</summary>
    public static CompiledRule WithoutStart(CompiledRule rule, int index) => Copy(rule, rule.Patterns, [.. rule.AtStart.Where((_, i) => i != index)]);

    private static CompiledRule Copy(CompiledRule rule, IReadOnlyList<Pattern> patterns, IReadOnlyList<StateCondition> atStart) => new()
    {
        Name = rule.Name,
        Title = rule.Title,
        Pack = rule.Pack,
        Span = rule.Span,
        Variables = rule.Variables,
        Patterns = patterns,
        Tests = rule.Tests,
        Moments = rule.Moments,
        AtStart = atStart,
        MomentSpans = rule.MomentSpans,
        AtStartSpans = rule.AtStartSpans,
        Conclusions = rule.Conclusions,
        Because = rule.Because,
        Basis = rule.Basis,
    };
}
