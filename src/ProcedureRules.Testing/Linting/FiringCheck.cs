using ProcedureRules.Diagnostics;
using ProcedureRules.Language;
using ProcedureRules.Language.Nodes;
using ProcedureRules.Packs;

namespace ProcedureRules.Testing.Linting;

/// <summary>Finds rules that can never fire and conditions that always hold, where loading the packs could not tell.</summary>
internal static class FiringCheck
{
    public static IEnumerable<LintFinding> Find(LintSubject subject)
    {
        var words = new SettableWords(subject);
        foreach (var rule in subject.Authored)
        {
            if (Steps(rule, subject) is { } never) yield return new LintFinding(rule.Span, never);
            foreach (var finding in Conditions(rule, words.Of)) yield return new LintFinding(rule.Span, finding);
        }
    }

    private static Diagnostic? Steps(CompiledRule rule, LintSubject subject)
    {
        foreach (var step in rule.Variables.Where(variable => variable.Sort == Sort.Step))
        {
            var patterns = rule.Patterns.Where(pattern => pattern.First == step.Slot).ToList();
            if (!subject.Occurring.Any(operation => patterns.TrueForAll(pattern => StepChoice.Meets(operation, pattern, rule))))
                return Messages.StepNeverComes(rule.Span, step.Name, patterns.Select(pattern => pattern.Text).Distinct());
        }

        return null;
    }

    private static IEnumerable<Diagnostic> Conditions(CompiledRule rule, Func<FactDefinition, ulong> wordsOf)
    {
        var conditions = rule.Tests.Select(test => test.Node).OfType<TruthNode>().ToList();
        if (new FiniteCases(rule, conditions, wordsOf).NeverHold) return [Messages.NeverTogether(rule.Span, rule.Tests.Select(test => test.Text))];
        return rule.Tests.Where(test => test.Node is { } node && new FiniteCases(rule, [node], wordsOf).AlwaysHold)
            .Select(test => Messages.HoldsWhatever(test.Span, test.Text));
    }
}
