using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Testing.Expectations;

namespace ProcedureRules.Testing.Mutating;

/// <summary>A rule at a moment of a case.</summary>
/// <param name="Case">The case.</param>
/// <param name="Stage">The moment.</param>
/// <param name="Of">The records of the rule, by their places among all records of the moment.</param>
internal sealed record StagedRule(ScenarioCase Case, Stage Stage, IReadOnlyList<int> Of)
{
    /// <summary>The rule.</summary>
    public required CompiledRule Rule { get; init; }

    /// <summary>Plans the moment with the rule changed; the rules of a moment share it.</summary>
    public required StagePlanner Planner { get; init; }

    /// <summary>What the moment's expectations are about; the rules of a moment share it.</summary>
    public required Lazy<Concern> Concern { get; init; }

    /// <summary>The approved plan that it is held to; null where it is held to none.</summary>
    public required Lazy<HeldPlan>? Held { get; init; }

    /// <summary>The atoms that hold at the moment; the rules of a moment share them.</summary>
    public required Lazy<StandingAtoms> Atoms { get; init; }

    /// <summary>Whether the plan of the moment took long to find: steps were looked at before that made none.</summary>
    public bool IsSlow => Stage.Outcome.Plan.Rejected > 0;

    /// <summary>How many records the moment has: how long it takes to plan.</summary>
    public int Records => Stage.Outcome.Beliefs.Network.Records.Count;
}
