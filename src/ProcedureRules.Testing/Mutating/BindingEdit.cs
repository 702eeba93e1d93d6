using ProcedureRules.Inference;
using ProcedureRules.Language;

namespace ProcedureRules.Testing.Mutating;

/// <summary>A condition that binds, or one on the state at the start, is dropped: the rule may match more, so it is inferred with anew.</summary>
internal sealed class BindingEdit(IReadOnlyList<(CompiledRule Old, CompiledRule New)> rules) : RuleEdit
{
    public override RuleBase? Inferring(RuleBase all) => RuleCopies.With(all, rules);

    public override Record Apply(Record record) => record;
}
