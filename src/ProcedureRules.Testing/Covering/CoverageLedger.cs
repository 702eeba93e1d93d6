using ProcedureRules.Beliefs;
using ProcedureRules.Diagnostics;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;

namespace ProcedureRules.Testing.Covering;

/// <summary>Adds up what the cases reach; may be written to from several threads.</summary>
internal sealed class CoverageLedger(RuleBase rules)
{
    private readonly Lock _lock = new();
    private readonly Tally<(string Pack, string Rule)> _matched = new();
    private readonly Tally<(string Pack, string Rule)> _fired = new();
    private readonly Tally<(string Pack, string Rule)> _sure = new();
    private readonly Tally<((string Pack, string Rule) Rule, SourceSpan Condition, Truth Truth)> _conditions = new();
    private readonly Tally<SourceSpan> _conclusions = new();
    private readonly Tally<Operation> _planned = new();
    private readonly Tally<FactDefinition> _known = new();
    private readonly Tally<FactDefinition> _asked = new();
    private readonly Tally<JobDefinition> _jobs = new();
    private readonly Tally<JobDefinition> _finished = new();

    /// <summary>Adds a case.</summary>
    public void Add(CoverageSheet sheet)
    {
        lock (_lock)
        {
            _matched.Add(sheet.Rules.Keys);
            _fired.Add(sheet.Rules.Where(rule => rule.Value > Assurance.No).Select(rule => rule.Key));
            _sure.Add(sheet.Rules.Where(rule => rule.Value == Assurance.Sure).Select(rule => rule.Key));
            _conditions.Add(sheet.Conditions);
            _conclusions.Add(sheet.Conclusions);
            _planned.Add(sheet.Planned);
            _known.Add(sheet.Known);
            _asked.Add(sheet.AskedFacts);
            _jobs.Add(sheet.Jobs.Keys);
            _finished.Add(sheet.Jobs.Where(job => job.Value).Select(job => job.Key));
        }
    }

    /// <summary>The sums over everything authored.</summary>
    public CoverageReport Report(int cases) => new(
        [.. rules.Rules.Take(rules.AuthoredCount).GroupBy(rule => (rule.Pack, rule.Title)).Select(Rule)],
        [.. rules.Vocabulary.Operations.Values.Select(operation => new OperationCoverage(operation.Pack, operation.Name, operation.Span, _planned[operation]))],
        [.. rules.Vocabulary.Facts.Select(fact => new FactCoverage(fact.Pack, fact.ToString(), fact.Span, _known[fact], _asked[fact]))],
        [.. rules.Vocabulary.Jobs.Values.Select(job => new JobCoverage(job.Pack, job.Name, job.Span, _jobs[job], _finished[job]))],
        cases);

    private RuleCoverage Rule(IGrouping<(string Pack, string Title), CompiledRule> written)
    {
        var (rule, first) = (written.Key, written.First());
        var tests = written.SelectMany(TestsOf).DistinctBy(test => test.Span)
            .Select(test => new ConditionCoverage(test.Text, test.Span, Seen(rule, test, Truth.Yes), Seen(rule, test, Truth.No), Seen(rule, test, Truth.Unknown)));
        var conclusions = written.SelectMany(ConclusionsOf).Select(conclusion => conclusion.Span).Where(span => span.File is not null).Distinct()
            .OrderBy(span => span.Offset).Select(span => new ConclusionCoverage(FirstLine(span), span, _conclusions[span]));
        return new RuleCoverage(rule.Pack, rule.Title, first.Span, _matched[rule], _fired[rule], _sure[rule], [.. tests], [.. conclusions]);
    }

    private int Seen((string, string) rule, Test test, Truth truth) => _conditions[(rule, test.Span, truth)];

    private static string FirstLine(SourceSpan span) => span.File!.LineText(span.Line)[(span.Column - 1)..].Trim();

    private static IEnumerable<Test> TestsOf(CompiledRule rule) =>
        rule.Tests.Concat(rule.Conclusions.OfType<Conclusion.OneOf>().SelectMany(choice => choice.Options).Select(option => option.If).OfType<Test>());

    private static IEnumerable<Conclusion> ConclusionsOf(CompiledRule rule) => rule.Conclusions.SelectMany(conclusion =>
        conclusion is Conclusion.OneOf choice ? choice.Options.SelectMany(option => option.Then).Prepend(conclusion) : [conclusion]);
}
