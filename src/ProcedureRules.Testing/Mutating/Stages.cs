using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Testing.Expectations;

namespace ProcedureRules.Testing.Mutating;

/// <summary>Every moment at which a case is planned, with the records of each rule, so that a mutant meets only those that hold its rule.</summary>
internal sealed class Stages
{
    private readonly Dictionary<(string Pack, string Rule), List<StagedRule>> _byRule = [];
    private readonly List<StagedCase> _held = [];

    private Stages(IReadOnlyList<CaseResult> failed) => Failed = failed;

    /// <summary>The cases that fail with the packs as they are: with them nothing can be said of mutants.</summary>
    public IReadOnlyList<CaseResult> Failed { get; }

    /// <summary>Runs the cases.</summary>
    public static Stages Of(IReadOnlyList<ScenarioCase> cases, CancellationToken cancellation)
    {
        var runs = new (List<Stage> Stages, CaseResult Result)[cases.Count];
        Parallel.For(0, cases.Count, Workers.Options(cancellation), i =>
        {
            var stages = new List<Stage>();
            runs[i] = (stages, cases[i].Run(stages.Add, cancellation));
        });
        var all = new Stages([.. runs.Select(run => run.Result).Where(result => !result.Passed)]);
        for (var i = 0; i < cases.Count; i++)
            foreach (var stage in runs[i].Stages.Where(stage => stage.Judging.Count > 0 || stage.Approved is not null)) all.Add(new StagedCase(cases[i], stage));
        return all;
    }

    /// <summary>The moments at which a rule has matched: those held to an approved plan first, then who expects what it says, then what is planned soonest.</summary>
    public IReadOnlyList<StagedRule> With(string pack, string rule) =>
        [.. (_byRule.GetValueOrDefault((pack, rule)) ?? []).OrderBy(staged => !staged.At.IsHeld).ThenByDescending(staged => staged.At.IsHeld ? 0 : Relevance.Of(staged)).ThenBy(staged => staged.At.Records).ThenBy(staged => staged.At.Case.Name, StringComparer.Ordinal)];

    /// <summary>The rule that a record is of; what an option says is said by the rule that offers it.</summary>
    public static CompiledRule? RuleOf(Record record) =>
        record.Rule ?? (record.Mechanism == Mechanism.Option && record.Premises.OfType<Atom.Open>().FirstOrDefault()?.Choice is ChoiceKey.OfRule choice ? choice.Rule : null);

    /// <summary>The moments held to an approved plan at which a rule has not matched, what is planned soonest of each scenario first.</summary>
    public IReadOnlyList<StagedRule> Without(CompiledRule rule)
    {
        var with = (_byRule.GetValueOrDefault((rule.Pack, rule.Title)) ?? []).Select(staged => staged.At).ToHashSet();
        return [.. _held.Where(held => !with.Contains(held)).Select(held => new StagedRule(held, rule, [])).OrderBy(staged => staged.At.Records).ThenBy(staged => staged.At.Case.Name, StringComparer.Ordinal)];
    }

    private void Add(StagedCase at)
    {
        if (at.IsHeld) _held.Add(at);
        var records = at.Stage.Outcome.Beliefs.Network.Records;
        foreach (var group in Enumerable.Range(0, records.Count).Where(i => RuleOf(records[i]) is not null).GroupBy(i => (RuleOf(records[i])!.Pack, RuleOf(records[i])!.Title)))
        {
            if (!_byRule.TryGetValue(group.Key, out var staged)) _byRule[group.Key] = staged = [];
            staged.Add(new StagedRule(at, RuleOf(records[group.First()])!, [.. group]));
        }
    }
}
