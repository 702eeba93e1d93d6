using System.Runtime.CompilerServices;
using ProcedureRules.Packs;

namespace ProcedureRules.Facts;

/// <summary>An aspect of a part: what has a state.</summary>
/// <param name="Part">The part.</param>
/// <param name="Aspect">The aspect.</param>
public readonly record struct StateVariable(Part Part, Aspect Aspect)
{
    /// <inheritdoc/>
    public bool Equals(StateVariable other) => ReferenceEquals(Part, other.Part) && ReferenceEquals(Aspect, other.Aspect);

    // States are looked up at every step of every simulated plan.
    /// <inheritdoc/>
    public override int GetHashCode() => (RuntimeHelpers.GetHashCode(Part) * 397) ^ RuntimeHelpers.GetHashCode(Aspect);
}
