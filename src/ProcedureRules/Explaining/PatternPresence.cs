using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Packs;

namespace ProcedureRules.Explaining;

/// <summary>Whether anything on a vehicle meets a condition that binds, taken by itself.</summary>
internal static class PatternPresence
{
    public static bool Has(BeliefState beliefs, Predicate predicate)
    {
        var vocabulary = beliefs.Network.Result.Rules.Vocabulary;
        return predicate.Sort switch
        {
            PredicateSort.Part => vocabulary.Kinds.TryGetValue(predicate.Name, out var kind) && beliefs.PartsOf(kind).Count > 0,
            PredicateSort.Related => beliefs.Network.AtomsOf<Atom.Related>().Any(atom => atom.Relation.Name == predicate.Name && beliefs.Available(atom) > Assurance.No),
            PredicateSort.Job => beliefs.Network.Result.Situation.Jobs.Any(job => job.Job.Name == predicate.Name),
            _ => beliefs.Network.AtomsOf<Atom.Occurs>().Any(atom => beliefs.Available(atom) > Assurance.No && Meets(atom.Step.Operation, predicate)),
        };
    }

    /// <summary>Such a condition in words: what it binds has no name of its own, so its sort is said.</summary>
    public static string Words(BeliefState beliefs, Pattern pattern) => pattern.Predicate.Sort switch
    {
        PredicateSort.Part => $"the sheet has such a part: {KindText(beliefs, pattern.Predicate.Name)}",
        PredicateSort.Related => $"some parts stand so: {pattern.Text}",
        PredicateSort.Job => $"such a job is asked for: {pattern.Text}",
        _ => $"some step is such that: {pattern.Text}",
    };

    private static string KindText(BeliefState beliefs, string name) =>
        beliefs.Network.Result.Rules.Vocabulary.Kinds.TryGetValue(name, out var kind) ? kind.Text : name;

    private static bool Meets(Operation operation, Predicate predicate) => predicate.Sort switch
    {
        PredicateSort.Does => operation.Name == predicate.Name,
        PredicateSort.Leaves => operation.Changes.Any(change => change.Aspect.Name == predicate.Name && change.From.Has(change.Aspect.IndexOf(predicate.Detail))),
        PredicateSort.Reaches => operation.Changes.Any(change => change.Aspect.Name == predicate.Name && change.To == change.Aspect.IndexOf(predicate.Detail)),
        PredicateSort.Place => operation.Place == predicate.Name,
        PredicateSort.Energy => operation.Energies.Contains(predicate.Name),
        PredicateSort.Phase => string.Equals(operation.Phase.ToString(), predicate.Name, StringComparison.OrdinalIgnoreCase),
        _ => true,
    };
}
