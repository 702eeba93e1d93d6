namespace ProcedureRules.Validating;

/// <summary>Something wrong with a draft of a plan.</summary>
/// <param name="Step">The id of the step at which it shows; null: at the end or over all.</param>
/// <param name="Text">What is wrong.</param>
/// <param name="Question">The id of the question of which one answer shows it; null: it is wrong as planned.</param>
internal sealed record Violation(string? Step, string Text, string? Question = null)
{
    /// <inheritdoc/>
    public override string ToString() => Step is null ? Text : $"{Step}: {Text}";
}
