using ProcedureRules.Packs;

namespace ProcedureRules.Facts;

/// <summary>A fact of one part of a vehicle.</summary>
public readonly record struct FactKey(Part Part, FactDefinition Fact)
{
    /// <inheritdoc/>
    public override string ToString() => $"{Part.Name}.{Fact.Name}";
}
