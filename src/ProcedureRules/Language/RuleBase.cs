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

    /// <summary>The instruction of each operation; slot 0 is the step's part.</summary>
    public required IReadOnlyDictionary<Operation, Template> Instructions { get; init; }

    /// <summary>
    /// What must hold while an aspect is in a state; slot 0 is the part, and each further slot is every part of the kind named in
    /// <see cref="WhileCondition.Other"/>.
    /// </summary>
    public required IReadOnlyList<WhileCondition> Whiles { get; init; }
}
