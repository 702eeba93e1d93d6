using ProcedureRules.Asking;
using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Logic;

namespace ProcedureRules.Testing.Mutating;

/// <summary>What is believed otherwise once a record is changed, before the ways are chosen and under the ways that the plan takes.</summary>
internal sealed class LabelChanges : IConsequences
{
    private readonly List<(BeliefState Before, BeliefState After)> _beliefs;

    public LabelChanges(StagedRule staged, BeliefNetwork after)
    {
        var outcome = staged.Stage.Outcome;
        _beliefs = [(outcome.Beliefs, after.Initial)];
        if (outcome.Plan.Beliefs.Network != outcome.Beliefs.Network) return;
        var taken = outcome.Plan.Choices.Select(choice => new Supposition.Takes(choice.Key, outcome.Plan.Beliefs.Taken(choice.Key))).ToList();
        if (taken.Count > 0) _beliefs.Add((outcome.Plan.Beliefs, after.Initial.With([.. taken.Where(after.Covers)])));
    }

    /// <inheritdoc/>
    public bool Has(int record) => _beliefs.Exists(pair =>
    {
        var (before, after) = (pair.Before.Network.Records[record], pair.After.Network.Records[record]);
        return !ReferenceEquals(before, after) || pair.Before.LabelOf(before) != pair.After.LabelOf(after);
    });

    /// <inheritdoc/>
    public bool Has(Atom atom) => _beliefs.Exists(pair =>
        pair.Before.Required(atom) != pair.After.Required(atom) || pair.Before.Available(atom) != pair.After.Available(atom) || pair.Before.TruthOf(atom) != pair.After.TruthOf(atom));

    /// <inheritdoc/>
    public bool Has(FactKey fact) => _beliefs.Exists(pair =>
        pair.Before.Fact(fact.Part, fact.Fact) != pair.After.Fact(fact.Part, fact.Fact) || pair.Before.SourceOf(fact) != pair.After.SourceOf(fact)
        || (fact.Fact.Type.IsQuantity && (pair.Before.Demanded(fact.Part, fact.Fact) != pair.After.Demanded(fact.Part, fact.Fact) || pair.Before.Allowed(fact.Part, fact.Fact) != pair.After.Allowed(fact.Part, fact.Fact))));

    /// <inheritdoc/>
    public bool Has(string cause, IReadOnlyList<int> findings) => _beliefs.Exists(pair => !Verdicts(pair.Before, cause).SequenceEqual(Verdicts(pair.After, cause)));

    private static IEnumerable<(Part Part, Truth Truth)> Verdicts(BeliefState beliefs, string cause) =>
        Verdict.Under(beliefs).Where(verdict => verdict.Cause.Name == cause).Select(verdict => (verdict.Part, verdict.Truth));
}
