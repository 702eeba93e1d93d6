namespace ProcedureRules.Reports.Sheets;

/// <summary>A plan laid out for paper: what is printed, in its order, before it is known in which format.</summary>
/// <param name="Title">The jobs.</param>
/// <param name="Vehicle">The vehicle.</param>
/// <param name="Fields">Blanks of the head.</param>
/// <param name="Blocks">The rest.</param>
internal sealed record WorkSheet(string Title, string Vehicle, IReadOnlyList<string> Fields, IReadOnlyList<SheetBlock> Blocks);
