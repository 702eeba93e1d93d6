namespace ProcedureRules.Inference;

/// <summary>A structural predicate that holds of one or two objects: what the conditions of rules are matched against.</summary>
/// <param name="predicate">The predicate's number in the <see cref="RuleIndex"/>.</param>
/// <param name="first">The first object, a part or a step.</param>
/// <param name="second">The second object, where there is one.</param>
/// <param name="source">The atom behind it.</param>
internal sealed class Ground(int predicate, object? first, object? second, Node source)
{
    private int _gone;

    public int Predicate { get; } = predicate;
    public object? First { get; } = first;
    public object? Second { get; } = second;
    public Node Source { get; } = source;

    /// <summary>A part that the predicate also needs, where it is not <see cref="Source"/> that brings it.</summary>
    public Node? Beside { get; init; }

    /// <summary>The instances that used it; some may be gone.</summary>
    public List<RuleInstance> Users { get; } = [];

    /// <summary>Notes that a user is gone; the list is tidied now and then rather than searched each time.</summary>
    public void UserIsGone()
    {
        if (++_gone < 16 || _gone * 2 < Users.Count) return;
        Users.RemoveAll(user => !user.IsAlive);
        _gone = 0;
    }
}
