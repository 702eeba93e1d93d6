using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Planning;

namespace ProcedureRules.Explaining;

/// <summary>Finds the support of an atom that is told: the most direct one that the plan's own steps lead to, or else the most direct at all.</summary>
internal sealed class Support
{
    private readonly BeliefState _beliefs;
    private readonly Foundations _all;
    private readonly Foundations? _inPlan;

    public Support(BeliefState beliefs, Plan? plan)
    {
        (_beliefs, _all) = (beliefs, new Foundations(beliefs));
        if (plan is null) return;
        var steps = plan.Steps.Select(step => step.Step).ToHashSet();
        _inPlan = new Foundations(beliefs, record => Foundations.IsWithin(record, steps));
    }

    /// <summary>What stands behind an atom of some level; null where it is stated, or where it does not hold.</summary>
    public RecordEffect? Direct(Atom atom, Assurance level) => level == Assurance.No || _all.IsStated(atom, level) ? null
        : _inPlan is not null && Direct(_inPlan, atom, level) is { } inPlan ? inPlan : Direct(_all, atom, level);

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
