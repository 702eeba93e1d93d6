using ProcedureRules.Packs;

namespace ProcedureRules.Language;

/// <summary>A variable of a compiled rule; its slot is its index in a binding.</summary>
/// <param name="Name">Its name; a kind's name for an implicit variable.</param>
/// <param name="Sort">Part or step.</param>
/// <param name="Kind">For a part: the kind it ranges over.</param>
/// <param name="Slot">Its index in a binding.</param>
public sealed record Variable(string Name, Sort Sort, Kind? Kind, int Slot);
