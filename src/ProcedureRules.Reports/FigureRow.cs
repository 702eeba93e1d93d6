namespace ProcedureRules.Reports;

/// <summary>A row of a table of figures.</summary>
/// <param name="Figures">A figure for each column; null where there is none, and the note says why.</param>
/// <param name="Note">What is to be said of the row; null for nothing.</param>
public sealed record FigureRow(IReadOnlyList<double?> Figures, string? Note = null);
