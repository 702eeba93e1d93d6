namespace ProcedureRules.Reports;

/// <summary>One line of a text report, wrapped to its width.</summary>
/// <param name="Text">The text, without trailing blanks.</param>
/// <param name="Tone">How it wants to be read.</param>
public readonly record struct ReportLine(string Text, Tone Tone);
