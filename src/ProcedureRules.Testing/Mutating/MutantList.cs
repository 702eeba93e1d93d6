using System.Globalization;
using ProcedureRules.Diagnostics;
using ProcedureRules.Language;
using ProcedureRules.Packs;

namespace ProcedureRules.Testing.Mutating;

/// <summary>Every change of one thing in the rules of packs, in the order of the packs.</summary>
internal sealed class MutantList
{
    private readonly List<Mutant> _mutants = [];
    private readonly Dictionary<string, int> _ids = new(StringComparer.Ordinal);
    private IReadOnlyList<CompiledRule> _group = [];

    // Where packs write what is done with the unknown: what is left to the keyword's own default is no decision of the rule.
    private readonly HashSet<(string Pack, string Rule)> _rulesThatSay;
    private readonly HashSet<SourceSpan> _conclusionsThatSay;

    private MutantList(PackSet written)
    {
        _rulesThatSay = [.. written.Rules.Where(rule => rule.IfUnknown != IfUnknown.Default).Select(rule => (rule.Pack, rule.Name))];
        _conclusionsThatSay =
        [
            .. written.Rules.SelectMany(rule => rule.Then.Concat(rule.Then.SelectMany(conclusion => conclusion.Options).SelectMany(option => option.Then)))
                .Where(conclusion => conclusion.IfUnknown != IfUnknown.Default).Select(conclusion => (conclusion.Target ?? conclusion.Text)?.Span ?? conclusion.Span),
        ];
    }

    /// <summary>The mutants of all rules; the same ones in the same order for the same packs.</summary>
    public static IReadOnlyList<Mutant> Of(ProcedureEngine engine)
    {
        var list = new MutantList(engine.Written);
        foreach (var group in engine.Rules.Rules.GroupBy(rule => (rule.Pack, rule.Title)))
        {
            list._group = [.. group];
            list.AddConditions();
            foreach (var conclusion in list._group.SelectMany(rule => rule.Conclusions).DistinctBy(conclusion => conclusion, ReferenceEqualityComparer.Instance)) list.Add(conclusion);
        }

        return list._mutants;
    }

    private void AddConditions()
    {
        var rule = _group[0];
        foreach (var test in rule.Tests) AddTest(test);
        for (var i = 0; i < rule.MomentSpans.Count; i++)
        {
            var text = Written(rule.MomentSpans[i]);
            Add(rule.MomentSpans[i], $"drop the condition '{text}'", $"a step at a moment at which '{text}' does not hold", new MomentEdit(i, isNegated: false));
            Add(rule.MomentSpans[i], $"turn the condition '{text}' round", $"a step at a moment at which '{text}' holds", new MomentEdit(i, isNegated: true));
        }

        for (var i = 0; i < rule.AtStartSpans.Count; i++)
        {
            var (index, text) = (i, Written(rule.AtStartSpans[i]));
            Add(rule.AtStartSpans[i], $"drop the condition '{text}'", $"a vehicle that arrives so that '{text}' does not hold",
                new BindingEdit([.. _group.Select(old => (old, RuleCopies.WithoutStart(old, index)))]));
        }

        foreach (var pattern in rule.Patterns.Where(pattern => pattern.Span.File is not null && CanGo(rule, pattern)))
            Add(pattern.Span, $"drop the condition '{pattern.Text}'", $"a vehicle, or a step, that '{pattern.Text}' keeps out",
                new BindingEdit([.. _group.Select(old => (old, RuleCopies.WithoutPattern(old, old.Patterns.First(other => other.Equals(pattern)))))]));
    }

    // A variable that nothing else binds would be about everything.
    private static bool CanGo(CompiledRule rule, Pattern pattern) => rule.Patterns.Count > 1
        && new[] { pattern.First, pattern.Second }.Where(slot => slot >= 0).All(slot => rule.Patterns.Any(other =>
            !ReferenceEquals(other, pattern) && other.Predicate.Sort != PredicateSort.Step && (other.First == slot || other.Second == slot)));

    private void AddTest(Test test)
    {
        Add(test.Span, $"drop the condition '{test.Text}'", $"a case in which '{test.Text}' does not hold and the rest does", new TestEdit(test, null));
        if (TestVariants.Negated(test) is { } negated)
            Add(test.Span, $"turn the condition '{test.Text}' round", $"a case in which '{test.Text}' holds, and what follows is expected", new TestEdit(test, negated));
        foreach (var (figure, moved, other) in TestVariants.Moved(test))
            Add(test.Span, $"{figure} becomes {moved} in '{test.Text}'", $"a case in which the value lies between {figure} and {moved}", new TestEdit(test, other));
    }

    private void Add(Conclusion conclusion)
    {
        if (!IsMeant(conclusion)) return;
        var text = Written(conclusion.Span);
        Add(conclusion.Span, $"drop the conclusion '{text}'", "a case in which the rule fires, that expects it", new ConclusionEdit(conclusion, null));
        foreach (var (change, due, other) in ConclusionVariants.Of(conclusion, SaysOfUnknown(conclusion))) Add(conclusion.Span, change, due, new ConclusionEdit(conclusion, other));
        if (conclusion is not Conclusion.OneOf choice) return;
        foreach (var option in choice.Options)
        {
            if (option.If is { } condition) AddTest(condition);
            foreach (var then in option.Then) Add(then);
        }
    }

    private bool SaysOfUnknown(Conclusion conclusion) => _rulesThatSay.Contains((_group[0].Pack, _group[0].Title)) || _conclusionsThatSay.Contains(conclusion.Span);

    // What operations list for a step beside its needs and figures is a list, no rule: nobody proves it line by line.
    private bool IsMeant(Conclusion conclusion) => !_group[0].Title.StartsWith("operation ", StringComparison.Ordinal) || conclusion is Conclusion.Need or Conclusion.Figure;

    private void Add(SourceSpan span, string change, string due, RuleEdit edit)
    {
        var rule = _group[0];
        var id = $"{rule.Pack}: {rule.Title}: {change}";
        var number = _ids[id] = _ids.GetValueOrDefault(id) + 1;
        _mutants.Add(new Mutant(number == 1 ? id : string.Create(CultureInfo.InvariantCulture, $"{id} #{number}"), rule.Pack, rule.Title, span.File is null ? rule.Span : span, change, due, edit));
    }

    private static string Written(SourceSpan span) => span.File?.Text.Substring(span.Offset, span.Length).ReplaceLineEndings(" ").Trim('"', '\'', ' ') ?? "";
}
