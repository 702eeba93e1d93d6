using ProcedureRules.Inference;
using ProcedureRules.Language;

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

    private int IndexIn(Record record)
    {
        for (var i = 0; i < record.Tests.Count; i++)
            if (ReferenceEquals(record.Tests[i], test)) return i;
        return -1;
    }
}
