using ProcedureRules.Facts;
using ProcedureRules.Packs;

namespace ProcedureRules.Language;

/// <summary>A kind of step of a plan: an operation on a part. When and how often it occurs is planning's matter.</summary>
public sealed record Step(Operation Operation, Part Part)
{
    // Steps are the keys of nearly everything that planning looks up.
    private readonly int _hash = HashCode.Combine(Operation, Part);

    /// <summary>The name used in commands and JSON: <c>operation(part)</c>.</summary>
    public string Name => field ??= $"{Operation.Name}({Part.Name})";

    /// <inheritdoc/>
    public bool Equals(Step? other) => other is not null && ReferenceEquals(Part, other.Part) && ReferenceEquals(Operation, other.Operation);

    /// <inheritdoc/>
    public override int GetHashCode() => _hash;

    /// <inheritdoc/>
    public override string ToString() => Name;
}
