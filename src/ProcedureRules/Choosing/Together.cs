using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;

namespace ProcedureRules.Choosing;

/// <summary>The steps of one plan: what a rule says of one step because of another counts where both are in it.</summary>
internal sealed class Together(IEnumerable<Step> steps)
{
    private readonly HashSet<Step> _steps = [.. steps];

    /// <summary>The records that count before it is settled which steps come in with the moments of a plan: those too that serve a purpose.</summary>
    public static Func<Record, bool> OrServing(BeliefState beliefs, IEnumerable<Step> steps)
    {
        var together = new Together(steps);
        return record => together.Has(record) || beliefs.Purposes.Serve(record);
    }

    /// <summary>Whether every step that a record is about is in the plan.</summary>
    public bool Has(Record record)
    {
        foreach (var premise in record.Premises)
            if (premise is Atom.Occurs occurs && !_steps.Contains(occurs.Step)) return false;
        return true;
    }
}
