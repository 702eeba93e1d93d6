using System.Diagnostics;
using ProcedureRules.Diagnostics;
using ProcedureRules.Testing.Approving;
using ProcedureRules.Testing.Expectations;
using ProcedureRules.Testing.Scenarios;

namespace ProcedureRules.Testing;

/// <summary>Runs one case.</summary>
internal sealed class CaseRun(ProcedureEngine engine, ScenarioCase of, Action<Stage> seen, CancellationToken cancellation)
{
    private const int MostLines = 16;
    private readonly List<ExpectationResult> _results = [];
    private readonly DiagnosticBag _mistakes = new();

    public CaseResult Run()
    {
        var watch = Stopwatch.StartNew();
        var opened = engine.Open(of.Situation);
        _mistakes.AddRange(opened.Diagnostics);
        if (opened.Session is { } session)
            for (var number = 0; number < of.Turns.Count && !_mistakes.HasErrors; number++) Run(session, of.Turns[number], number);
        return new CaseResult(of, _results, _mistakes.Ordered(), watch.Elapsed);
    }

    private void Run(ProcedureSession session, Turn turn, int number)
    {
        foreach (var statement in turn.Statements) _mistakes.AddRange(session.State(statement));
        foreach (var done in turn.Done)
        {
            if (Plan(session, [done], null) is not { } before) return;
            if (Judge(done, before, number).Holds) _mistakes.AddRange(session.Record(done.Step.In(before.Plan)[0]));
        }

        var approved = of.Approved.GetValueOrDefault(number);
        if ((turn.Expectations.Count == 0 && turn.Done.Count > 0 && approved is null) || Plan(session, turn.Expectations, number) is not { } outcome) return;
        foreach (var expectation in turn.Expectations) Judge(expectation, outcome, number);
        if (approved is not null) Compare(approved, outcome, number);
    }

    private void Compare(ApprovedSection approved, Outcome outcome, int number)
    {
        var lines = approved.DifferencesOf([.. PlanOutline.Of(outcome.Plan)]);
        var came = lines.Count == 0 ? "" : $"{Messages.Count(lines.Count, "line")} otherwise than in {approved.Span}";
        _results.Add(new ExpectationResult("the approved plan", of.Span, number, lines.Count == 0, came, () => lines.Count <= MostLines ? lines : [.. lines.Take(MostLines), "(and so on)"]));
    }

    private Outcome? Plan(ProcedureSession session, IReadOnlyList<Expectation> judging, int? turn)
    {
        var result = session.Plan(cancellation);
        _mistakes.AddRange(result.Diagnostics);
        if (result.Plan is not { } plan) return null;
        var outcome = new Outcome(plan, session.Beliefs);
        seen(new Stage(session.Situation, outcome, judging, turn) { Approved = turn is { } number ? of.Approved.GetValueOrDefault(number) : null });
        return outcome;
    }

    private Judgement Judge(Expectation expectation, Outcome outcome, int number)
    {
        var judgement = expectation.Judge(outcome);
        _results.Add(new ExpectationResult(expectation.Text, expectation.Span, number, judgement.Holds, judgement.Came, judgement.Explain));
        return judgement;
    }
}
