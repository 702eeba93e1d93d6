using ProcedureRules.Diagnostics;
using ProcedureRules.Language;
using ProcedureRules.Packs;

namespace ProcedureRules.Testing.Linting;

/// <summary>Finds cautions that are held back while their condition is unknown, and choices that are lost with a part that one option names.</summary>
internal static class CautionCheck
{
    public static IEnumerable<LintFinding> Find(LintSubject subject)
    {
        foreach (var rule in subject.Authored)
        {
            foreach (var caution in RuleNodes.ConclusionsOf(rule).OfType<Conclusion.Caution>())
                if (caution is { IfUnknown: not IfUnknown.Do, Signal: not Signal.Notice })
                    yield return new LintFinding(rule.Span, Messages.LosableCaution(caution.Span, caution.Signal.ToString().ToLowerInvariant()));
            foreach (var choice in rule.Conclusions.OfType<Conclusion.OneOf>())
                foreach (var kind in LostWith(rule, choice)) yield return new LintFinding(rule.Span, Messages.OptionKind(choice.Options[0].Span, kind));
        }
    }

    // A part that only conclusions name is bound by nothing but its kind.
    private static IEnumerable<string> LostWith(CompiledRule rule, Conclusion.OneOf choice)
    {
        if (rule.Name == rule.Title || choice.Options.Count < 2) return [];
        var bound = rule.Patterns.Where(pattern => pattern.Predicate.Sort != PredicateSort.Part).SelectMany(pattern => new[] { pattern.First, pattern.Second })
            .Concat(rule.Tests.Select(test => test.Node).OfType<Language.Nodes.Node>().SelectMany(RuleNodes.SlotsOf))
            .Concat(rule.Moments.Concat(rule.AtStart).Select(state => state.Slot)).ToHashSet();
        var named = choice.Options.Select(option => option.Then.SelectMany(RuleNodes.SlotsOf).ToHashSet()).ToList();
        return rule.Variables.Where(variable => !bound.Contains(variable.Slot) && named.Exists(slots => slots.Contains(variable.Slot)) && !named.TrueForAll(slots => slots.Contains(variable.Slot)))
            .Select(variable => variable.Name);
    }
}
