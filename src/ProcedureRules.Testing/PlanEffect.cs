namespace ProcedureRules.Testing;

/// <summary>The same change in one plan or several.</summary>
/// <param name="Sort">What becomes of it.</param>
/// <param name="Text">What it is, in words.</param>
/// <param name="Plans">The names of the plans.</param>
public sealed record PlanEffect(PlanEffectSort Sort, string Text, IReadOnlyList<string> Plans);
