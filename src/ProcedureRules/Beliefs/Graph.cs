namespace ProcedureRules.Beliefs;

/// <summary>What feeds what in a network, by the numbers of a <see cref="NodeIndex"/>.</summary>
internal sealed class Graph
{
    public required NodeIndex Nodes { get; init; }

    /// <summary>Record: the atoms it rests on.</summary>
    public required Rows<int> Premises { get; init; }

    /// <summary>Atom: the effects that conclude it (a relation: see <see cref="Contributors"/>).</summary>
    public required Rows<(int Record, int Effect)> Supports { get; init; }

    /// <summary>Node of a relation, a fact or a demand: the contributions that feed it.</summary>
    public required Rows<int> Contributors { get; init; }

    /// <summary>Contribution: the nodes its value reads.</summary>
    public required Rows<int> ValueReads { get; init; }

    /// <summary>Contribution: the nodes whose rank it cannot exceed.</summary>
    public required Rows<int> RankedBy { get; init; }

    /// <summary>Contribution: whether any evidence speaks through it (a fact, a relation), or only the word of the pack.</summary>
    public required bool[] HasEvidence { get; init; }

    /// <summary>What a record's tests and a contribution's value read, by their nodes; the edges that no ring may go through.</summary>
    public required IReadOnlyList<(int Reader, int Read)> Reads { get; init; }

    /// <summary>Node: the nodes to look at again when its label changes.</summary>
    public required Rows<int> Successors { get; init; }
}
