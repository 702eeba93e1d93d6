using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Logic;

namespace ProcedureRules.Choosing;

/// <summary>
/// Works out what no complete set of choices built on a node can come below: the labour of what is settled, and of each choice that has to be
/// made the cheapest way. That a step is as good as sure now is not enough: a rule may ask for it only where something else is not so.
/// </summary>
internal sealed class ChoiceBounds(ChoiceBook book)
{
    /// <summary>The nodes of what opens each choice.</summary>
    private readonly int[] _opening = [.. book.Keys.Select(key => book.Network.Graph.Nodes.Of(new Atom.Open(key)))];

    /// <summary>A node with its bound.</summary>
    public ChoiceNode Node(BeliefState beliefs, int[] ways, ChoiceGain?[] gains)
    {
        var open = book.Keys.Where((key, i) => ways[i] == ChoiceNode.Open && beliefs.Available(new Atom.Open(key)) > Assurance.No);
        var unsettled = new Unsettled(beliefs.Network, book.Reach, open);
        return WithBound(new ChoiceNode(beliefs, ways, gains, unsettled, new DecisionKey(0, [], 0, 0, [])));
    }

    /// <summary>The same node with the bound that follows from what has been looked at.</summary>
    public ChoiceNode WithBound(ChoiceNode node)
    {
        var waiting = 0;
        var ranks = new List<int>();
        var pack = new int[book.Keys.Count];
        var gains = new List<ChoiceGain>();
        for (var i = 0; i < pack.Length; i++)
        {
            pack[i] = -1;
            if (!HasToBeMade(node, i)) continue;
            var key = book.Keys[i];
            switch (node.Ways[i])
            {
                case ChoiceNode.None:
                    waiting++;
                    break;
                case ChoiceNode.Open:
                    pack[i] = 0;
                    ranks.Add(MayBeGone(node, i).Select(option => book.StepsDown(key, option.Index)).DefaultIfEmpty().Min());
                    if (node.Gains[i] is { } gain) gains.Add(gain);
                    break;
                case var way:
                    pack[i] = way;
                    ranks.Add(book.StepsDown(key, way));
                    break;
            }
        }

        var sure = book.Labour.Sure(node.Beliefs, node.Unsettled);
        var (twice, most) = ChoiceGain.Least(gains, sure);
        foreach (var step in sure)
        {
            twice += step.Least + step.Most;
            most += step.Most;
        }

        return node with { Bound = new DecisionKey(waiting, DecisionKey.Sorted(ranks), twice, most, pack) };
    }

    /// <summary>Whether a choice has to be made whatever else is decided.</summary>
    public bool HasToBeMade(ChoiceNode node, int choice)
    {
        var level = node.Beliefs.Required(new Atom.Open(book.Keys[choice]));
        return level >= Assurance.Provisional && node.Unsettled.IsSettled(level, _opening[choice]);
    }

    /// <summary>The ways of a choice that are open or may turn out to be, with what else is decided.</summary>
    public IEnumerable<ChoiceOption> MayBeGone(ChoiceNode node, int choice)
    {
        var key = book.Keys[choice];
        var binding = (key as ChoiceKey.OfRule)?.Binding;
        foreach (var option in book.Options(key))
        {
            if (node.Gains[choice]?.Has(option.Index) == false) continue;
            var isOpen = option.IsOpen(node.Beliefs, binding);
            if (isOpen == Truth.Yes || (isOpen == Truth.Unknown && !option.Reads.All(node.Unsettled.IsSettled))) yield return option;
        }
    }
}
