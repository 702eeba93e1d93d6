namespace ProcedureRules.Testing.Mutating;

/// <summary>The forms of all records of a rule at a moment.</summary>
internal sealed class RuleForms(IReadOnlyList<RecordForm> forms) : IEquatable<RuleForms>
{
    /// <summary>The forms in the order of the records.</summary>
    public IReadOnlyList<RecordForm> Forms => forms;

    /// <inheritdoc/>
    public bool Equals(RuleForms? other) => other is not null && forms.SequenceEqual(other.Forms);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as RuleForms);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = default(HashCode);
        foreach (var form in forms) hash.Add(form);
        return hash.ToHashCode();
    }
}
