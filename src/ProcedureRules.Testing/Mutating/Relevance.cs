using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;
using ProcedureRules.Testing.Expectations;

namespace ProcedureRules.Testing.Mutating;

/// <summary>How much what a moment expects has to do with what a rule says there: who expects its words or its steps is asked first.</summary>
internal static class Relevance
{
    private const int OfWords = 4;

    /// <summary>The more the likelier that a change of the rule is noticed.</summary>
    public static int Of(StagedRule staged)
    {
        var network = staged.Stage.Outcome.Beliefs.Network;
        var (texts, operations, ids) = (new HashSet<string>(StringComparer.Ordinal), new HashSet<Operation>(), new HashSet<string>(StringComparer.Ordinal));
        foreach (var record in staged.Of.Select(at => network.Records[at]))
        {
            for (var slot = 0; slot < record.Binding.Count; slot++)
                if (record.Binding[slot] is Step step) operations.Add(step.Operation);
            foreach (var test in record.Tests)
                foreach (var reading in test.Reads(record.Binding, network.PartsOf)) ids.Add(reading.Id);
            foreach (var effect in record.Effects) Add(effect, record, staged.Stage, texts, operations, ids);
        }

        return staged.Stage.Judging.Sum(expected => expected switch
        {
            WordsExpected words => texts.Any(text => text.Contains(words.Words, StringComparison.OrdinalIgnoreCase)) ? OfWords : 0,
            StepExpected step => operations.Contains(step.Step.Operation) ? 1 : 0,
            OrderExpected order => (operations.Contains(order.First.Operation) ? 1 : 0) + (operations.Contains(order.Second.Operation) ? 1 : 0),
            QuestionExpected question => ids.Contains(question.Id) ? 1 : 0,
            ValueExpected value => ids.Contains($"{value.Part}.{value.Fact.Name}") ? OfWords : 0,
            FindingExpected finding => texts.Contains(finding.Cause) ? OfWords : 0,
            _ => 0,
        });
    }

    private static void Add(Effect effect, Record record, Stage stage, HashSet<string> texts, HashSet<Operation> operations, HashSet<string> ids)
    {
        if (effect.Fact is { } fact) ids.Add(fact.ToString());
        if (effect.Atom is Atom.Occurs occurs) operations.Add(occurs.Step.Operation);
        if (effect.Atom is Atom.Wanted wanted)
            foreach (var way in stage.Situation.Vocabulary.WaysTo(wanted.Part.Kind, wanted.Aspect, wanted.States)) operations.Add(way);
        if (effect.Conclusion is Conclusion.Finding finding) texts.Add(finding.Cause.Name);
        if (Hearing.AnyTextOf(effect.Conclusion) is { } text) texts.Add(text.Render(stage.Outcome.Plan.Beliefs, record.Binding, UnitSystem.Us));
    }
}
