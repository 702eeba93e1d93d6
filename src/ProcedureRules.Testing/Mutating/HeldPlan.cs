using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;
using ProcedureRules.Testing.Approving;
using ProcedureRules.Testing.Expectations;

namespace ProcedureRules.Testing.Mutating;

/// <summary>A moment that is held to an approved plan, and what is known of other plans without making them.</summary>
internal sealed class HeldPlan
{
    private readonly Outcome _outcome;
    private readonly IReadOnlyList<OutlineBlock> _outline;
    private readonly List<(FactKey Key, Value Value)> _values = [];
    private readonly HashSet<Step> _steps;

    public HeldPlan(Outcome outcome)
    {
        _outcome = outcome;
        _outline = [.. PlanOutline.Of(outcome.Plan)];
        _steps = [.. outcome.Plan.Steps.Select(step => step.Step)];
        Signs = new PlanSigns(outcome.Plan);
        if (outcome.Plan.Beliefs.Network != outcome.Beliefs.Network) return;
        var chosen = Chosen(outcome.Beliefs.Network);
        foreach (var key in outcome.Beliefs.Network.Graph.Nodes.Facts)
            if (PlanOutline.IsWorkedOut(outcome.Plan.Beliefs, key) && !IsReached(chosen, outcome.Beliefs.Network, key)) _values.Add((key, outcome.Beliefs.Fact(key.Part, key.Fact)));
    }

    /// <summary>The lines that name their rules.</summary>
    public PlanSigns Signs { get; }

    /// <summary>Whether what is believed before any way is chosen makes sure that the plan comes out otherwise: a figure, a step that is due, or one that cannot be.</summary>
    public bool IsOtherwise(BeliefState beliefs)
    {
        var chosen = Chosen(beliefs.Network);
        foreach (var (key, value) in _values)
            if (beliefs.Fact(key.Part, key.Fact) != value && !IsReached(chosen, beliefs.Network, key) && beliefs.Fact(key.Part, key.Fact).In(UnitSystem.Us) != value.In(UnitSystem.Us)) return true;
        if (_steps.Any(step => beliefs.Available(new Atom.Occurs(step)) == Assurance.No)) return true;
        return _steps.Count > 0 && beliefs.Network.AtomsOf<Atom.Occurs>().Any(atom => !_steps.Contains(atom.Step) && beliefs.Required(atom) == Assurance.Sure
            && beliefs.Network.RecordsSupporting(atom).Any(support => support.Record.Mechanism != Mechanism.Undo && beliefs.Required(support.Record, support.Index) == Assurance.Sure));
    }

    /// <summary>Whether a plan says something else.</summary>
    public bool IsOther(Plan plan)
    {
        // What has another course is told apart before anything is put into words.
        if (!plan.Steps.Select(step => step.Id).SequenceEqual(_outcome.Plan.Steps.Select(step => step.Id), StringComparer.Ordinal) || plan.Labour != _outcome.Plan.Labour) return true;
        return !PlanOutline.Of(plan).SequenceEqual(_outline);
    }

    private static ulong[] Chosen(BeliefNetwork network)
    {
        var atoms = network.Graph.Nodes.Atoms;
        return new Reach(network).From(Enumerable.Range(0, atoms.Count).Where(at => atoms[at] is Atom.Chosen));
    }

    private static bool IsReached(ulong[] reached, BeliefNetwork network, FactKey key) =>
        network.Graph.Nodes.Of(key) is >= 0 and var fact && Reach.Has(reached, network.Graph.Nodes.NodeOf(new NodeRef(NodeSort.Fact, fact)));
}
