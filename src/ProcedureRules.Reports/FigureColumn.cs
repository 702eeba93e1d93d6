namespace ProcedureRules.Reports;

/// <summary>A column of a table of figures.</summary>
/// <param name="Name">Its heading, and the name of the property in JSON.</param>
/// <param name="Digits">How many digits stand behind the point in text; JSON has one more.</param>
public readonly record struct FigureColumn(string Name, int Digits);
