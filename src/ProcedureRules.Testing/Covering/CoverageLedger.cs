using System.Runtime.InteropServices;
using ProcedureRules.Beliefs;
using ProcedureRules.Diagnostics;
using ProcedureRules.Language;
using ProcedureRules.Logic;

namespace ProcedureRules.Testing.Covering;

/// <summary>Adds up what the cases reach; may be written to from several threads.</summary>
internal sealed class CoverageLedger(RuleBase rules)
{
    private readonly Lock _lock = new();
    private readonly Dictionary<(string Pack, string Rule), (int Matched, int Fired, int Sure)> _rules = [];
    private readonly Dictionary<((string Pack, string Rule) Rule, SourceSpan Condition, Truth Truth), int> _conditions = [];

    /// <summary>Adds a case.</summary>
    public void Add(CoverageSheet sheet)
    {
        lock (_lock)
        {
            foreach (var (rule, level) in sheet.Rules)
            {
                ref var sum = ref CollectionsMarshal.GetValueRefOrAddDefault(_rules, rule, out _);
                sum = (sum.Matched + 1, sum.Fired + (level > Assurance.No ? 1 : 0), sum.Sure + (level == Assurance.Sure ? 1 : 0));
            }

            foreach (var seen in sheet.Conditions) CollectionsMarshal.GetValueRefOrAddDefault(_conditions, seen, out _)++;
        }
    }

    /// <summary>The sums over every authored rule.</summary>
    public CoverageReport Report(int cases) => new(
        [
            .. rules.Rules.Take(rules.AuthoredCount).GroupBy(rule => (rule.Pack, rule.Title)).Select(written =>
            {
                var (matched, fired, sure) = _rules.GetValueOrDefault(written.Key);
                var tests = written.SelectMany(TestsOf).DistinctBy(test => test.Span).Select(test => new ConditionCoverage(
                    test.Text, test.Span, Seen(written.Key, test, Truth.Yes), Seen(written.Key, test, Truth.No), Seen(written.Key, test, Truth.Unknown)));
                return new RuleCoverage(written.Key.Pack, written.Key.Title, written.First().Span, matched, fired, sure, [.. tests]);
            }),
        ],
        cases);

    private int Seen((string, string) rule, Test test, Truth truth) => _conditions.GetValueOrDefault((rule, test.Span, truth));

    private static IEnumerable<Test> TestsOf(CompiledRule rule) =>
        rule.Tests.Concat(rule.Conclusions.OfType<Conclusion.OneOf>().SelectMany(choice => choice.Options).Select(option => option.If).OfType<Test>());
}
