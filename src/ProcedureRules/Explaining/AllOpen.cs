using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Logic;

namespace ProcedureRules.Explaining;

/// <summary>
/// The beliefs when nothing is known of any fact, relation or part that was possible, but for the parts that the jobs are on: what holds in none of the cases that are then open holds
/// under no change of them.
/// </summary>
internal static class AllOpen
{
    public static BeliefState Of(BeliefState beliefs)
    {
        var network = beliefs.Network;
        return beliefs.With(
        [
            .. network.Result.Situation.Observations.Select(observation => observation.Fact).Distinct()
                .Select(fact => new Supposition.Observed(fact, [])),
            .. network.AtomsOf<Atom.Related>().Select(atom => new Supposition.RelationHolds(atom.Relation, atom.A, atom.B, Truth.Unknown, Source.None)).Where(network.Covers),
            .. network.AtomsOf<Atom.Exists>().Where(atom => !network.Result.Situation.Jobs.Any(job => job.On == atom.Part)).Select(atom => new Supposition.PartExists(atom.Part, Truth.Unknown, Source.None)).Where(network.Covers),
        ]);
    }
}
