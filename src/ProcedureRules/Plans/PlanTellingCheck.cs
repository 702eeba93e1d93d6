using ProcedureRules.Language;
using ProcedureRules.Quantities;

namespace ProcedureRules.Plans;

/// <summary>Something to find out that tells rival causes apart.</summary>
/// <param name="Id">The id of what is found out, as <c>--set</c> takes it.</param>
/// <param name="About">The key.</param>
/// <param name="Text">The question.</param>
/// <param name="How">How to find out; null where nothing is said.</param>
/// <param name="Labour">What finding it out takes, with the work it needs first; nothing for what is only looked at or asked.</param>
/// <param name="Work">The work it needs first, in order of need; empty where it needs none.</param>
/// <param name="Answers">The answers that change the verdict on some cause.</param>
public sealed record PlanTellingCheck(
    string Id, Reading About, Wording Text, Wording? How, Quantity Labour, IReadOnlyList<Wording> Work, IReadOnlyList<TellingAnswer> Answers);
