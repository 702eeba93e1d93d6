using ProcedureRules.Beliefs;
using ProcedureRules.Inference;

namespace ProcedureRules.Choosing;

/// <summary>
/// What the choices still open can change. A label is settled where it is sure, not possible, or out of their reach: what else looks firm
/// may fall with a choice, since rules can also read that something is not so.
/// </summary>
internal sealed class Unsettled
{
    private readonly NodeIndex _nodes;
    private readonly ulong[] _reached;

    public Unsettled(BeliefNetwork network, Reach reach, IEnumerable<ChoiceKey> open)
    {
        _nodes = network.Graph.Nodes;
        _reached = new ulong[(_nodes.NodeCount + 63) / 64];
        foreach (var choice in open)
        {
            var more = reach.Of(choice);
            for (var i = 0; i < more.Length; i++) _reached[i] |= more[i];
        }
    }

    /// <summary>Whether the label of an atom stays.</summary>
    public bool IsSettled(Assurance level, int atom) => level is Assurance.Sure or Assurance.No || !Reach.Has(_reached, atom);

    /// <summary>Whether what is read at a node stays.</summary>
    public bool IsSettled(int node) => !Reach.Has(_reached, node);

    /// <summary>Whether what a record concludes at a level stays.</summary>
    public bool IsSettled(Assurance level, Record record) =>
        level is Assurance.Sure or Assurance.No || !Reach.Has(_reached, _nodes.RecordNode(_nodes.Of(record)));
}
