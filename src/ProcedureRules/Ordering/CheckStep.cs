using ProcedureRules.Language;

namespace ProcedureRules.Ordering;

/// <summary>A step that finds a fact out, and the possible steps that the fact decides on.</summary>
internal sealed record CheckStep(Step Step, IReadOnlyList<Step> Settles);
