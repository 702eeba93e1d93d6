using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Testing.Expectations;

namespace ProcedureRules.Testing.Mutating;

/// <summary>A change of one rule, made on what inference concluded with the rule as it is, so that nothing is matched anew.</summary>
internal abstract class RuleEdit
{
    /// <summary>The rules to infer with where the change lets a rule match more than before; null where the records can be edited.</summary>
    public virtual RuleBase? Inferring(RuleBase rules) => null;

    /// <summary>The record as the changed rule would have made it; the same one where the change does not concern it.</summary>
    public abstract Record Apply(Record record);

    /// <summary>Whether the change can come through at all where a record of the rule stands: a quick look that never says no wrongly.</summary>
    public abstract bool CanShow(Record record, Stage stage);

    /// <summary>The same record with something else in it.</summary>
    protected static Record With(Record record, IReadOnlyList<Test>? tests = null, IReadOnlyList<GroundState>? moments = null, IReadOnlyList<Effect>? effects = null) => new()
    {
        Mechanism = record.Mechanism,
        Rule = record.Rule,
        Binding = record.Binding,
        Premises = record.Premises,
        Tests = tests ?? record.Tests,
        Moments = moments ?? record.Moments,
        Effects = effects ?? record.Effects,
    };

    /// <summary>Whether anything of a record is so much as possible.</summary>
    protected static bool IsPossible(Record record, BeliefState beliefs)
    {
        for (var effect = 0; effect < record.Effects.Count; effect++)
            if (beliefs.Available(record, effect) > Assurance.No) return true;
        return false;
    }
}
