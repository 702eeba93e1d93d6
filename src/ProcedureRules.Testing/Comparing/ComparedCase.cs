using ProcedureRules.Facts;
using ProcedureRules.Testing.Scenarios;

namespace ProcedureRules.Testing.Comparing;

/// <summary>A vehicle with its jobs, and what is found out and done then, as one version of the packs reads it.</summary>
internal sealed record ComparedCase(string Name, Situation Situation, IReadOnlyList<Turn> Turns);
