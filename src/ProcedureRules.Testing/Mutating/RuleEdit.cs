using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Testing.Expectations;

namespace ProcedureRules.Testing.Mutating;

/// <summary>A change of one rule, made on what inference concluded with the rule as it is, so that nothing is matched anew.</summary>
internal abstract class RuleEdit
{
    /// <summary>The rules to match anew with where the change lets a rule match more than before; null where the records can be edited.</summary>
    public virtual Rematch? Matching(RuleBase rules) => null;

    /// <summary>Whether the changed rule may match at a moment, as far as that shows without inferring.</summary>
    public virtual bool MayMatch(Stage stage) => true;

    /// <summary>The record as the changed rule would have made it; the same one where the change does not concern it.</summary>
    public abstract Record Apply(Record record);

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
}
