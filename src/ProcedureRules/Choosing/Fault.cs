using ProcedureRules.Inference;
using ProcedureRules.Plans;

namespace ProcedureRules.Choosing;

/// <summary>Why a set of choices cannot be used, or a job not be done.</summary>
/// <param name="Text">In words.</param>
/// <param name="IsSure">Whether it is sure.</param>
/// <param name="Record">The record behind it.</param>
/// <param name="Atom">What had been wanted in spite of it, where there is such.</param>
internal sealed record Fault(Wording Text, bool IsSure, Record Record, Atom? Atom = null);
