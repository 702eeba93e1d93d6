using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Testing.Expectations;

namespace ProcedureRules.Testing.Mutating;

/// <summary>A condition that binds, or one on the state at the start, is dropped: the rule may match more, so it is inferred with anew.</summary>
internal sealed class BindingEdit(IReadOnlyList<(CompiledRule Old, CompiledRule New)> rules) : RuleEdit
{
    private Rematch? _matching;

    public override Rematch? Matching(RuleBase all) => _matching ??= new(all, rules);

    public override Record Apply(Record record) => record;

    public override bool MayMatch(Stage stage) => rules.Any(pair => pair.New.Patterns.All(pattern => MayMatch(pattern.Predicate, stage.Outcome.Beliefs.Network)));

    private static bool MayMatch(Predicate predicate, BeliefNetwork network) => predicate.Sort switch
    {
        PredicateSort.Does => network.AtomsOf<Atom.Occurs>().Any(atom => atom.Step.Operation.Name == predicate.Name),
        PredicateSort.Job => network.AtomsOf<Atom.Asked>().Any(atom => atom.Request.Job.Name == predicate.Name),
        PredicateSort.Related => network.AtomsOf<Atom.Related>().Any(atom => atom.Relation.Name == predicate.Name),
        _ => true,
    };
}
