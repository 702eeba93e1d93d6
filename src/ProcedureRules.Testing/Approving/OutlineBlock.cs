namespace ProcedureRules.Testing.Approving;

/// <summary>One step of an outline with what hangs on it, or one list of what is said of the whole.</summary>
/// <param name="Heading">What it is: <c>step drain_oil(engine)</c>, <c>questions</c>. No two blocks of an outline have the same.</param>
/// <param name="Lines">What it says, line by line.</param>
internal sealed record OutlineBlock(string Heading, IReadOnlyList<string> Lines)
{
    /// <inheritdoc/>
    public bool Equals(OutlineBlock? other) => other is not null && Heading == other.Heading && Lines.SequenceEqual(other.Lines, StringComparer.Ordinal);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Heading, Lines.Count);
}
