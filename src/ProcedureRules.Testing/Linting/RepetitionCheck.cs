using System.Text.RegularExpressions;
using ProcedureRules.Diagnostics;
using ProcedureRules.Language;

namespace ProcedureRules.Testing.Linting;

/// <summary>Finds conclusions that another rule draws under the same conditions, or under fewer.</summary>
internal static partial class RepetitionCheck
{
    public static IEnumerable<LintFinding> Find(LintSubject subject)
    {
        var said = subject.Authored.SelectMany(rule => rule.Conclusions.Select(conclusion => new Saying(rule, conclusion)))
            .Where(saying => saying.Words.Length > 0).GroupBy(saying => saying.Words, StringComparer.Ordinal);
        foreach (var same in said.Select(group => group.ToList()).Where(group => group.Count > 1))
        {
            foreach (var (saying, i) in same.Select((saying, i) => (saying, i)))
            {
                if (same.Take(i).FirstOrDefault(other => other.Conditions.SetEquals(saying.Conditions)) is { } twin)
                    yield return new LintFinding(saying.Rule.Span, Messages.SaidTwice(saying.Conclusion.Span, twin.Rule.Title, twin.Conclusion.Span));
                else if (same.Find(other => other.Conditions.IsProperSubsetOf(saying.Conditions)) is { } wider)
                    yield return new LintFinding(saying.Rule.Span, Messages.Shadowed(saying.Conclusion.Span, wider.Rule.Title, wider.Conclusion.Span));
            }
        }
    }

    [GeneratedRegex("[a-z][a-z0-9_]*", RegexOptions.CultureInvariant)]
    private static partial Regex Name();

    /// <summary>A conclusion with the conditions behind it, in words that do not hang on the names of variables.</summary>
    private sealed class Saying
    {
        private readonly Dictionary<string, string> _names;

        public Saying(CompiledRule rule, Conclusion conclusion)
        {
            (Rule, Conclusion) = (rule, conclusion);
            _names = rule.Variables.ToDictionary(variable => variable.Name, variable => OwnName(rule, variable), StringComparer.Ordinal);
            Words = Say(conclusion);
            Conditions =
            [
                .. rule.Patterns.Select(pattern => $"{pattern.Predicate}({Slot(pattern.First)}, {Slot(pattern.Second)})"),
                .. rule.Tests.Select(test => Plain(test.Text)),
                .. rule.Moments.Select(Plain),
                .. rule.AtStart.Select(state => $"at start {Plain(state)}"),
            ];
        }

        public CompiledRule Rule { get; }

        public Conclusion Conclusion { get; }

        public string Words { get; }

        public HashSet<string> Conditions { get; }

        private static string OwnName(CompiledRule rule, Variable variable)
        {
            var sort = variable.Kind?.Name ?? "step";
            return $"<{sort} {rule.Variables.TakeWhile(other => other != variable).Count(other => (other.Kind?.Name ?? "step") == sort)}>";
        }

        private string Slot(int slot) => slot < 0 ? "" : _names[Rule.Variables[slot].Name];

        private string Plain(StateCondition state) => $"{Slot(state.Slot)}.{state.Aspect} {state.States.Bits}";

        // A name is a variable where it stands alone or before a dot, never behind one.
        private string Plain(string text) => Name().Replace(text, name => name.Index > 0 && text[name.Index - 1] == '.' ? name.Value : _names.GetValueOrDefault(name.Value, name.Value));

        private string Say(Conclusion conclusion) => conclusion switch
        {
            Conclusion.Need c => $"need {Slot(c.Step)} {Plain(c.State)} {c.IfUnknown}",
            Conclusion.Order c => $"order {Slot(c.First)} {Slot(c.Second)} {c.IfUnknown}",
            Conclusion.ForbidStep c => $"forbid {Slot(c.Step)} {c.IfUnknown}",
            Conclusion.ForbidWork c => $"forbid {c.Operation} {Slot(c.Slot)} {c.IfUnknown}",
            Conclusion.ForbidState c => $"forbid {Plain(c.State)} {c.IfUnknown}",
            Conclusion.Do c => $"do {c.Operation} {Slot(c.Slot)} {Slot(c.Before)} {Slot(c.After)} {c.IfUnknown}",
            Conclusion.Set c => $"set {Slot(c.Slot)} {c.Fact} {Plain(c.Value.Text)} {c.IfUnknown}",
            Conclusion.Demand c => $"demand {Slot(c.Slot)} {c.Fact} {c.IsAtMost} {Plain(c.Value.Text)} {c.IfUnknown}",
            Conclusion.Relate c => $"relate {c.Relation} {Slot(c.First)} {Slot(c.Second)} {c.IfUnknown}",
            Conclusion.Caution c => $"{c.Signal} {Slot(c.Step)} {c.Text.Text} {c.IfUnknown}",
            Conclusion.Check c => $"check {Slot(c.Step)} {Plain(c.Limits.Text)} {c.During} {c.IfUnknown}",
            Conclusion.Detail c => $"detail {Slot(c.Step)} {c.Text.Text} {c.IfUnknown}",
            Conclusion.Tool c => $"tool {Slot(c.Step)} {c.Text.Text} {c.IfUnknown}",
            Conclusion.Supply c => $"supply {Slot(c.Step)} {c.Text.Text} {c.IfUnknown}",
            Conclusion.Finding c => $"{c.Speaks} {c.Cause} {Slot(c.Slot)} {c.IsStrong} {c.IfUnknown}",
            Conclusion.Stop c => $"stop {c.Text.Text} {c.IfUnknown}",
            _ => "",
        };
    }
}
