using ProcedureRules.Quantities;

namespace ProcedureRules.Language;

/// <summary>A parameter of a function that packs can call.</summary>
/// <param name="Name">Its name, for the reference and for messages.</param>
/// <param name="Dimension">What it takes.</param>
public sealed record FunctionParameter(string Name, Dimension Dimension);
