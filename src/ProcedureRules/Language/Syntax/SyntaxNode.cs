namespace ProcedureRules.Language.Syntax;

/// <summary>A piece of a snippet as parsed. Two nodes are equal when they say the same, wherever they stand.</summary>
internal abstract record SyntaxNode
{
    /// <summary>Where it starts in the snippet's text.</summary>
    public int Offset { get; init; }

    /// <summary>How many characters of the text it covers.</summary>
    public int Length { get; init; }

    /// <summary>The offset behind its last character.</summary>
    public int End => Offset + Length;

    /// <summary>Leaves the place out, so that printing and parsing again gives an equal tree.</summary>
    public virtual bool Equals(SyntaxNode? other) => other is not null && EqualityContract == other.EqualityContract;

    /// <inheritdoc/>
    public override int GetHashCode() => EqualityContract.GetHashCode();
}
