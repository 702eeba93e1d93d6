using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Packs;

namespace ProcedureRules.Inference;

/// <summary>One ground conclusion of a record.</summary>
/// <param name="Conclusion">The rule's conclusion; null where a mechanism concludes.</param>
/// <param name="Atom">The atom it supports, where it supports one.</param>
/// <param name="Fact">The fact it sets or demands, where it does.</param>
/// <param name="IfUnknown">What the plan does where it is possible but not sure.</param>
public sealed record Effect(Conclusion? Conclusion, Atom? Atom, FactKey? Fact, IfUnknown IfUnknown);
