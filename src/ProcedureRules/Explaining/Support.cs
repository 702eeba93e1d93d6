using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Plans;

namespace ProcedureRules.Explaining;

/// <summary>Finds the support of an atom that is told: the most direct one that the plan's own steps lead to, or else the most direct at all.</summary>
internal sealed class Support(BeliefState beliefs, Plan? plan)
{
    private readonly IReadOnlyList<Foundations> _foundations = Foundations.InOrder(beliefs, plan?.Steps.Select(step => step.Step).ToHashSet());

    /// <summary>
    /// What stands behind an atom of some level, and how firmly; null where it is stated, or where it does not hold. What the plan's own steps
    /// lead to comes first even where it is less firm than what other work would lead to.
    /// </summary>
    public (RecordEffect Effect, Assurance Level)? Direct(Atom atom, Assurance level)
    {
        if (level == Assurance.No || _foundations[0].IsStated(atom, level)) return null;
        foreach (var foundations in _foundations)
            for (var there = level; there > Assurance.No; there--)
                if (Direct(foundations, atom, there) is { } effect) return (effect, there);
        return null;
    }

    // A mechanism is not what a person asks for: what wanted the state is.
    private static RecordEffect? Direct(Foundations foundations, Atom atom, Assurance level)
    {
        while (foundations.SupportsOf(atom, level).Cast<RecordEffect?>().FirstOrDefault() is { } support)
        {
            var wanted = support.Record.Mechanism is Mechanism.Reach or Mechanism.Alternative
                ? support.Record.Premises.FirstOrDefault(premise => premise is Atom.Wanted or Atom.Open)
                : null;
            if (wanted is null) return support;
            atom = wanted;
        }

        return null;
    }
}
