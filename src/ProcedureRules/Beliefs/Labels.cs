using ProcedureRules.Facts;

namespace ProcedureRules.Beliefs;

/// <summary>All labels of a state, and the inputs they follow from; indexed as the nodes of the graph are.</summary>
internal sealed class Labels
{
    public Labels(Graph graph)
    {
        Inputs = new(graph.Nodes.Atoms.Count);
        Atoms = new(graph.Nodes.Atoms.Count);
        Records = new(graph.Nodes.Records.Count);
        Contributions = new(graph.Nodes.Contributions.Count);
        Observations = new(graph.Nodes.Facts.Count);
        Facts = new(graph.Nodes.Facts.Count);
        Demands = new(graph.Nodes.Demands.Count);
    }

    private Labels(Labels other)
    {
        Inputs = other.Inputs.Fork();
        Atoms = other.Atoms.Fork();
        Records = other.Records.Fork();
        Contributions = other.Contributions.Fork();
        Observations = other.Observations.Fork();
        Facts = other.Facts.Fork();
        Demands = other.Demands.Fork();
    }

    public Paged<AtomInput> Inputs { get; }
    public Paged<AtomLabel> Atoms { get; }
    public Paged<RecordLabel> Records { get; }
    public Paged<ContributionLabel> Contributions { get; }
    public Paged<IReadOnlyList<Observation>> Observations { get; }
    public Paged<FactLabel> Facts { get; }
    public Paged<DemandLabel> Demands { get; }

    public Labels Fork() => new(this);
}
