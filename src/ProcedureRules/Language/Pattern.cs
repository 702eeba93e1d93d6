using ProcedureRules.Diagnostics;

namespace ProcedureRules.Language;

/// <summary>A condition that binds: a predicate over one or two slots.</summary>
/// <param name="Predicate">What must hold.</param>
/// <param name="First">The slot of the first argument.</param>
/// <param name="Second">The slot of the second argument, or -1.</param>
/// <param name="Text">The condition as written; the kind's name for a variable that is only declared.</param>
public sealed record Pattern(Predicate Predicate, int First, int Second, string Text)
{
    /// <summary>Where the condition is written; none for what follows from a declaration.</summary>
    public SourceSpan Span { get; init; }

    /// <summary>Whether it says the same; where it is written is no part of that.</summary>
    public bool Equals(Pattern? other) =>
        other is not null && Predicate == other.Predicate && First == other.First && Second == other.Second && Text == other.Text;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Predicate, First, Second, Text);
}
