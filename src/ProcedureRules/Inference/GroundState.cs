using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Packs;

namespace ProcedureRules.Inference;

/// <summary>A state condition on one part.</summary>
public readonly record struct GroundState(Part Part, Aspect Aspect, StateSet States)
{
    /// <summary>What has the state.</summary>
    public StateVariable Variable => new(Part, Aspect);

    /// <summary>Whether a step leads to it by itself, and not only back to what it was.</summary>
    internal bool IsReachedBy(Step step)
    {
        if (!ReferenceEquals(step.Part, Part)) return false;
        foreach (var change in step.Operation.Changes)
            if (ReferenceEquals(change.Aspect, Aspect) && change.To >= 0 && States.Has(change.To)) return true;
        return false;
    }

    /// <inheritdoc/>
    public override string ToString()
    {
        var aspect = Aspect;
        var states = States.States().Select(state => aspect.States[state]).ToList();
        return $"{Part.Name}.{Aspect.Name} is {(states.Count == 1 ? states[0] : $"[{string.Join(", ", states)}]")}";
    }
}
