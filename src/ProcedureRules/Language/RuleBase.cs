using ProcedureRules.Packs;

namespace ProcedureRules.Language;

/// <summary>Checked and compiled packs: what an engine runs on. Immutable; safe on many threads.</summary>
public sealed class RuleBase
{
    /// <summary>The packs' heads.</summary>
    public required IReadOnlyList<PackHeader> Packs { get; init; }

    /// <summary>All names.</summary>
    public required Vocabulary Vocabulary { get; init; }

    /// <summary>Authored rules and table rows, then those made from operations and jobs.</summary>
    public required IReadOnlyList<CompiledRule> Rules { get; init; }

    /// <summary>How many of the rules were authored (the first ones).</summary>
    public required int AuthoredCount { get; init; }

    /// <summary>What every plan must keep to by itself. Nothing infers from laws: they are for proving packs.</summary>
    public IReadOnlyList<CompiledRule> Laws { get; init; } = [];

    /// <summary>The instruction of each operation; slot 0 is the step's part.</summary>
    public required IReadOnlyDictionary<Operation, Template> Instructions { get; init; }

    /// <summary>
    /// What must hold while an aspect is in a state; slot 0 is the part, and each further slot is every part of the kind named in
    /// <see cref="WhileCondition.Other"/>.
    /// </summary>
    public required IReadOnlyList<WhileCondition> Whiles { get; init; }

    /// <summary>The question that asks for each fact; slot 0 is the part.</summary>
    public IReadOnlyDictionary<FactDefinition, Template> Questions { get; init; } = new Dictionary<FactDefinition, Template>();

    /// <summary>How each fact is found out, where its pack says so; slot 0 is the part.</summary>
    public IReadOnlyDictionary<FactDefinition, Template> WaysToFind { get; init; } = new Dictionary<FactDefinition, Template>();

    /// <summary>The sentence of each cause; slot 0 is the part.</summary>
    public IReadOnlyDictionary<Cause, Template> Causes { get; init; } = new Dictionary<Cause, Template>();

    /// <summary>The title of each job; slot 0 is the part it is on.</summary>
    public IReadOnlyDictionary<JobDefinition, Template> Jobs { get; init; } = new Dictionary<JobDefinition, Template>();

    /// <summary>The sentence of each relation; slots 0 and 1 are its parts.</summary>
    public IReadOnlyDictionary<Relation, Template> Relations { get; init; } = new Dictionary<Relation, Template>();
}
