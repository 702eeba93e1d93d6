using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Planning;

namespace ProcedureRules.Explaining;

/// <summary>Finds the support of an atom that is told: the most direct one that the plan's own steps lead to, or else the most direct at all.</summary>
internal sealed class Support(BeliefState beliefs, Plan? plan)
{
    private readonly IReadOnlyList<Foundations> _foundations = Foundations.InOrder(beliefs, plan?.Steps.Select(step => step.Step).ToHashSet());

    /// <summary>What stands behind an atom of some level; null where it is stated, or where it does not hold.</summary>
    public RecordEffect? Direct(Atom atom, Assurance level) => level == Assurance.No || _foundations[0].IsStated(atom, level) ? null
        : _foundations.Select(foundations => Direct(foundations, atom, level)).FirstOrDefault(support => support is not null);

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
