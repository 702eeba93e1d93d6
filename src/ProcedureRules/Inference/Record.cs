using ProcedureRules.Language;

namespace ProcedureRules.Inference;

/// <summary>
/// A justification: what it rests on and what it concludes. A rule instance gives one record, and one more for each option of a
/// <c>one_of</c>; the mechanisms of planning (a wanted state brings its step, a step its undoing) give records of their own.
/// </summary>
public sealed class Record
{
    /// <summary>What produced it.</summary>
    public required Mechanism Mechanism { get; init; }

    /// <summary>The rule, for <see cref="Mechanism.Rule"/> and <see cref="Mechanism.Option"/>.</summary>
    public CompiledRule? Rule { get; init; }

    /// <summary>What the rule's variables stand for.</summary>
    public required Binding Binding { get; init; }

    /// <summary>Positive premises.</summary>
    public required IReadOnlyList<Atom> Premises { get; init; }

    /// <summary>Conditions judged under beliefs: the rule's tests, or the option's <c>if</c>.</summary>
    public IReadOnlyList<Test> Tests { get; init; } = [];

    /// <summary>Conditions on states at the moment of the step that a conclusion is about.</summary>
    public IReadOnlyList<GroundState> Moments { get; init; } = [];

    /// <summary>What it concludes.</summary>
    public required IReadOnlyList<Effect> Effects { get; init; }

    /// <summary>A name by its content; see <see cref="RecordName"/>.</summary>
    internal string Name => field ??= RecordName.Of(this);

    /// <inheritdoc/>
    public override string ToString() => $"{Mechanism} {Rule?.Name} [{string.Join(", ", Premises)}]";
}
