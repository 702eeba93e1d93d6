namespace ProcedureRules.Testing.Mutating;

/// <summary>A line of an approved plan that names the rule which stands behind it, as far as that rule alone can say it.</summary>
/// <param name="Sort">What the line is.</param>
/// <param name="At">The step, part or fact that it is about; null where that is open.</param>
/// <param name="Words">What it says, where the rule gives the words.</param>
internal readonly record struct Sign(SignSort Sort, object? At, string Words = "");
