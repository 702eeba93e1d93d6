namespace ProcedureRules.Reports;

/// <summary>A table of figures worked out by a function, with what they rest on.</summary>
/// <param name="Title">What it shows, one line.</param>
/// <param name="Columns">Its columns.</param>
/// <param name="Rows">Its rows.</param>
/// <param name="Notes">What has to be known to read it right.</param>
/// <param name="Basis">The published sources.</param>
public sealed record FigureTable(
    string Title,
    IReadOnlyList<FigureColumn> Columns,
    IReadOnlyList<FigureRow> Rows,
    IReadOnlyList<string> Notes,
    IReadOnlyList<string> Basis);
