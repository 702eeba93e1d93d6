using ProcedureRules.Packs;

namespace ProcedureRules.Language.Compiling;

/// <summary>A fact that selects the rows of a table.</summary>
internal sealed record TableInput(int Slot, FactDefinition Fact, Snippet Written);
