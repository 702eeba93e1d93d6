using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Testing.Expectations;

namespace ProcedureRules.Testing.Mutating;

/// <summary>A condition that tests is dropped, or another stands in its place.</summary>
internal sealed class TestEdit(Test test, Test? other) : RuleEdit
{
    public override Record Apply(Record record)
    {
        var at = IndexIn(record);
        if (at < 0) return record;
        var tests = record.Tests.ToList();
        if (other is null) tests.RemoveAt(at);
        else tests[at] = other;
        return With(record, tests: tests);
    }

    // What is settled stays so, whatever is found out or chosen; where both are alike nothing else in the network moves.
    public override bool CanShow(Record record, Stage stage)
    {
        var at = IndexIn(record);
        if (at < 0) return false;
        var beliefs = stage.Outcome.Beliefs;
        if (other is null && stage.Judging.Any(expected => expected is WordsExpected { Keyword: "assumption" })) return true;
        for (var i = 0; i < record.Tests.Count; i++)
            if (i != at && beliefs.TruthOf(record, i) == Truth.No) return false;
        if (PremisesFail(record, beliefs)) return false;
        var (before, after) = (test.Evaluate(beliefs, record.Binding), other?.Evaluate(beliefs, record.Binding) ?? Truth.Yes);
        return before != after;
    }

    private static bool PremisesFail(Record record, BeliefState beliefs)
    {
        foreach (var premise in record.Premises)
            if (beliefs.Available(premise) == Assurance.No) return true;
        return false;
    }

    private int IndexIn(Record record)
    {
        for (var i = 0; i < record.Tests.Count; i++)
            if (ReferenceEquals(record.Tests[i], test)) return i;
        return -1;
    }
}
