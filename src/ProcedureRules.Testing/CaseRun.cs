using System.Diagnostics;
using ProcedureRules.Diagnostics;
using ProcedureRules.Testing.Expectations;
using ProcedureRules.Testing.Scenarios;

namespace ProcedureRules.Testing;

/// <summary>Runs one case.</summary>
internal sealed class CaseRun(ProcedureEngine engine, ScenarioCase of, Action<Stage> seen, CancellationToken cancellation)
{
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
            if (Plan(session, [done]) is not { } before) return;
            if (Judge(done, before, number).Holds) _mistakes.AddRange(session.Record(done.Step.In(before.Plan)[0]));
        }

        if ((turn.Expectations.Count == 0 && turn.Done.Count > 0) || Plan(session, turn.Expectations) is not { } outcome) return;
        foreach (var expectation in turn.Expectations) Judge(expectation, outcome, number);
    }

    private Outcome? Plan(ProcedureSession session, IReadOnlyList<Expectation> judging)
    {
        var result = session.Plan(cancellation);
        _mistakes.AddRange(result.Diagnostics);
        if (result.Plan is not { } plan) return null;
        var outcome = new Outcome(plan, session.Beliefs);
        seen(new Stage(session.Situation, outcome, judging));
        return outcome;
    }

    private Judgement Judge(Expectation expectation, Outcome outcome, int number)
    {
        var judgement = expectation.Judge(outcome);
        _results.Add(new ExpectationResult(expectation.Text, expectation.Span, number, judgement.Holds, judgement.Came, judgement.Explain));
        return judgement;
    }
}
