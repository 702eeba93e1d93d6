using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Plans;

namespace ProcedureRules.Asking;

/// <summary>Something that hangs on what is not known.</summary>
/// <param name="Rests">The record that says so of a step, where it counts only with the other steps that it is about; null: it counts in any case.</param>
/// <param name="Open">The keys to ask for.</param>
/// <param name="Urgency">How soon.</param>
/// <param name="Text">What hangs on them.</param>
/// <param name="Subject">What is told once.</param>
/// <param name="Step">The step that they decide on; null: none by itself.</param>
/// <param name="IsCondition">Whether a condition of a rule reads them.</param>
internal sealed record Matter(Record? Rests, IReadOnlyList<Reading> Open, Urgency Urgency, Wording Text, object Subject, Step? Step, bool IsCondition);
