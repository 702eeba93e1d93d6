using ProcedureRules.Facts;
using ProcedureRules.Language;

namespace ProcedureRules.Testing.Laws;

/// <summary>What the variables of a law stand for in one plan.</summary>
/// <param name="Items">Parts and steps by slot.</param>
/// <param name="Places">For a step, its index in the plan; else -1.</param>
internal sealed record LawBinding(Binding Items, IReadOnlyList<int> Places)
{
    /// <summary>The part of a slot.</summary>
    public Part Part(int slot) => Items.Part(slot);
}
