using ProcedureRules.Facts;
using ProcedureRules.Packs;

namespace ProcedureRules.Inference;

/// <summary>A state condition on one part.</summary>
public readonly record struct GroundState(Part Part, Aspect Aspect, StateSet States)
{
    /// <summary>What has the state.</summary>
    public StateVariable Variable => new(Part, Aspect);

    /// <inheritdoc/>
    public override string ToString()
    {
        var aspect = Aspect;
        var states = States.States().Select(state => aspect.States[state]).ToList();
        return $"{Part.Name}.{Aspect.Name} is {(states.Count == 1 ? states[0] : $"[{string.Join(", ", states)}]")}";
    }
}
