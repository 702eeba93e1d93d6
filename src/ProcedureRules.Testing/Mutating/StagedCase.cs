using ProcedureRules.Inference;
using ProcedureRules.Testing.Expectations;

namespace ProcedureRules.Testing.Mutating;

/// <summary>A moment of a case, with what the rules that are tried there share. Safe on many threads.</summary>
internal sealed class StagedCase
{
    private readonly Lazy<Concern> _concern;
    private readonly Lazy<StandingAtoms> _atoms;
    private readonly Lazy<HeldPlan>? _held;
    private readonly Lazy<PlanLinks> _links;
    private readonly Lazy<bool> _isReadHeard;

    public StagedCase(ScenarioCase of, Stage stage)
    {
        (Case, Stage, Planner) = (of, stage, new StagePlanner(stage));
        _concern = new(() => new Concern(stage));
        _atoms = new(() => new StandingAtoms(stage.Outcome.Beliefs.Network.Result));
        _links = new(() => new PlanLinks(stage.Outcome.Plan));
        _held = stage.Approved is null ? null : new(() => new HeldPlan(stage.Outcome));
        _isReadHeard = new(() => stage.Judging.Any(expected => expected is WordsExpected { Keyword: "assumption" }) || (stage.Approved is not null && stage.Outcome.Plan.Assumptions.Count > 0));
    }

    /// <summary>The case.</summary>
    public ScenarioCase Case { get; }

    /// <summary>The moment.</summary>
    public Stage Stage { get; }

    /// <summary>Plans the moment with a rule changed.</summary>
    public StagePlanner Planner { get; }

    /// <summary>What its expectations are about.</summary>
    public Concern Concern => _concern.Value;

    /// <summary>The atoms that hold at it.</summary>
    public StandingAtoms Atoms => _atoms.Value;

    /// <summary>What of its plan tells whether a change can show.</summary>
    public PlanLinks Links => _links.Value;

    /// <summary>The approved plan that it is held to; null where it is held to none.</summary>
    public HeldPlan? Held => _held?.Value;

    /// <summary>Whether it is held to an approved plan.</summary>
    public bool IsHeld => _held is not null;

    /// <summary>Whether it shows what a condition reads, whatever it comes to: an assumption that is read stands in the plan.</summary>
    public bool IsReadHeard => _isReadHeard.Value;

    /// <summary>Whether its plan took long to find: steps were looked at before that made none.</summary>
    public bool IsSlow => Stage.Outcome.Plan.Rejected > 0;

    /// <summary>How many records it has: how long it takes to plan.</summary>
    public int Records => Stage.Outcome.Beliefs.Network.Records.Count;
}
