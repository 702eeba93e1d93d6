using ProcedureRules.Facts;
using ProcedureRules.Language;

namespace ProcedureRules.Inference;

/// <summary>
/// What a few rules match by themselves where all that holds is known: their records, without anything that would follow from them. A small part of
/// inferring anew.
/// </summary>
internal sealed class RuleMatches
{
    private readonly NodeTable _nodes = new();
    private readonly List<RuleInstance> _found = [];
    private readonly GroundJoins _joins;
    private readonly Workload _workload;

    private RuleMatches(RuleIndex index)
    {
        _workload = new Workload(index);
        _joins = new GroundJoins(index, _workload, instance =>
        {
            _workload.Count(instance, 1);
            _found.Add(instance);
        });
    }

    /// <summary>The records of some rules.</summary>
    /// <param name="rules">The rules, with the vocabulary they are written in.</param>
    /// <param name="atoms">What holds: what is stated, and what was concluded by whatever rules.</param>
    /// <param name="budget">The bound on records.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>The records; null where there are more than the bound.</returns>
    public static IReadOnlyList<Record>? Of(RuleBase rules, StandingAtoms atoms, int budget, CancellationToken cancellation)
    {
        var matches = new RuleMatches(RuleIndex.Of(rules));
        matches._workload.Begin(budget, cancellation);
        try
        {
            matches.Join(atoms);
        }
        catch (BudgetExceededException)
        {
            return null;
        }

        var records = new RecordMaker(matches._nodes);
        return [.. matches._found.Where(instance => IsAllowed(instance, atoms.Result.Situation)).Select(records.OfRule)];
    }

    private void Join(StandingAtoms atoms)
    {
        foreach (var atom in atoms.Joined) _joins.Add(_nodes.Intern(atom));
    }

    private static bool IsAllowed(RuleInstance instance, Situation situation) => instance.Plan.Rule.AtStart
        .All(condition => condition.States.Has(situation.StateNow(new StateVariable(instance.Binding.Part(condition.Slot), condition.Aspect))));
}
