using ProcedureRules.Diagnostics;

namespace ProcedureRules.Language;

/// <summary>
/// A rule ready for inference: patterns that bind, tests that are judged under beliefs, state conditions that are judged at a moment of the
/// plan, conclusions. Needs and attributes of operations, jobs and table rows are compiled to the same form.
/// </summary>
public sealed class CompiledRule
{
    /// <summary>Its name, unique in the packs.</summary>
    public required string Name { get; init; }

    /// <summary>The name as its pack writes it; <see cref="Name"/> says besides which kind a part of it is about.</summary>
    public string Title { get => field ?? Name; init; }

    /// <summary>The pack it stands in.</summary>
    public required string Pack { get; init; }

    /// <summary>Where it is written.</summary>
    public SourceSpan Span { get; init; }

    /// <summary>Its variables; the index is the slot.</summary>
    public required IReadOnlyList<Variable> Variables { get; init; }

    /// <summary>Conditions that bind; every variable is bound by at least one.</summary>
    public required IReadOnlyList<Pattern> Patterns { get; init; }

    /// <summary>Conditions judged under beliefs.</summary>
    public IReadOnlyList<Test> Tests { get; init; } = [];

    /// <summary>Conditions on states at the moment of the step that a conclusion is about.</summary>
    public IReadOnlyList<StateCondition> Moments { get; init; } = [];

    /// <summary>Conditions on states as they are now (written <c>at_start(...)</c>).</summary>
    public IReadOnlyList<StateCondition> AtStart { get; init; } = [];

    /// <summary>Where the moments that the rule writes itself are written: the first ones, in their order.</summary>
    internal IReadOnlyList<SourceSpan> MomentSpans { get; init; } = [];

    /// <summary>Where the states at the start are written, in their order.</summary>
    internal IReadOnlyList<SourceSpan> AtStartSpans { get; init; } = [];

    /// <summary>What it concludes.</summary>
    public required IReadOnlyList<Conclusion> Conclusions { get; init; }

    /// <summary>The reason in the technician's words.</summary>
    public Template? Because { get; init; }

    /// <summary>The published source, or "common practice".</summary>
    public string Basis { get; init; } = "";

    /// <inheritdoc/>
    public override string ToString() => Name;
}
