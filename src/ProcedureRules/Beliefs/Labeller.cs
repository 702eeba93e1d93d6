using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;

namespace ProcedureRules.Beliefs;

/// <summary>Works out the label of one node from the labels of those that feed it.</summary>
internal sealed class Labeller(Graph graph, Labels labels, IBeliefs beliefs)
{
    private readonly NodeIndex _nodes = graph.Nodes;
    private readonly List<FactMerge.Candidate> _candidates = [];

    /// <summary>Labels a node anew; false where its label stays. Without ranks it leaves them at nothing (see <see cref="Propagation"/>).</summary>
    public bool Label(int node, bool withRanks = true)
    {
        var (sort, index) = _nodes.Locate(node);
        return sort switch
        {
            NodeSort.Atom => Write(labels.Atoms, index, OfAtom(index, withRanks)),
            NodeSort.Record => Write(labels.Records, index, OfRecord(index)),
            NodeSort.Contribution => Write(labels.Contributions, index, OfContribution(index, withRanks)),
            NodeSort.Fact => Write(labels.Facts, index, OfFact(index)),
            _ => Write(labels.Demands, index, OfDemand(index)),
        };
    }

    /// <summary>Takes a node of a ring back to the bottom.</summary>
    public void Clear(int node)
    {
        var (sort, index) = _nodes.Locate(node);
        if (sort == NodeSort.Atom) labels.Atoms.Set(index, default);
        else if (sort == NodeSort.Record) labels.Records.Set(index, default);
        else labels.Contributions.Set(index, default);
    }

    /// <summary>Whether a node of a ring has the label it had.</summary>
    public bool IsSame(int node, Labels before)
    {
        var (sort, index) = _nodes.Locate(node);
        return sort switch
        {
            NodeSort.Atom => labels.Atoms[index] == before.Atoms[index],
            NodeSort.Record => labels.Records[index] == before.Records[index],
            _ => labels.Contributions[index] == before.Contributions[index],
        };
    }

    private static bool Write<T>(Paged<T> page, int index, T label)
        where T : IEquatable<T>
    {
        if (page[index].Equals(label)) return false;
        page.Set(index, label);
        return true;
    }

    private AtomLabel OfAtom(int index, bool withRanks)
    {
        var input = labels.Inputs[index];
        var (required, available) = (input.Level, input.Level);
        foreach (var (record, effect) in graph.Supports[index])
        {
            ref readonly var label = ref labels.Records[record];
            var source = _nodes.Records[record];
            required = Max(required, label.Required(source, source.Effects[effect]));
            available = Max(available, label.Available(source.Effects[effect]));
        }

        var contributors = graph.Contributors[index];
        foreach (var contributor in contributors)
        {
            required = Max(required, labels.Contributions[contributor].Required);
            available = Max(available, labels.Contributions[contributor].Available);
        }

        var atom = new AtomLabel(required, available, default);
        return withRanks ? atom with { Rank = RankOf(index, atom.Truth, input, contributors) } : atom;
    }

    private RankRange RankOf(int index, Truth truth, AtomInput input, ReadOnlySpan<int> contributors)
    {
        if (_nodes.Atoms[index] is not (Atom.Related or Atom.Exists)) return RankRange.Neutral;
        if (truth == Truth.Unknown) return RankRange.Open;
        var stated = input.Source == Source.None ? Source.Stated : input.Source;
        if (truth == Truth.No) return RankRange.Exactly(stated);
        var (low, high) = input.Level switch
        {
            Assurance.Sure => (stated, stated),
            Assurance.No => (Source.None, Source.None),
            _ => (Source.None, Source.Measured),
        };
        foreach (var contributor in contributors)
        {
            ref readonly var label = ref labels.Contributions[contributor];
            if (label.Required == Assurance.Sure && label.Rank.Low > low) low = label.Rank.Low;
            if (label.Available > Assurance.No && label.Rank.High > high) high = label.Rank.High;
        }

        return new(low, high);
    }

    private RecordLabel OfRecord(int index)
    {
        var (required, available) = (Assurance.Sure, Assurance.Sure);
        var (requiredConditions, availableConditions) = (Truth.Yes, Truth.Yes);
        foreach (var premise in graph.Premises[index])
        {
            ref readonly var label = ref labels.Atoms[premise];
            if (_nodes.Atoms[premise] is Atom.Related)
            {
                // A relation is as much a condition when it binds as when a test reads it: the conclusion says what an unknown one does.
                requiredConditions = Kleene.And(requiredConditions, TruthOf(label.Required));
                availableConditions = Kleene.And(availableConditions, TruthOf(label.Available));
            }
            else
            {
                required = Min(required, label.Required);
                available = Min(available, label.Available);
            }
        }

        if (available == Assurance.No || availableConditions == Truth.No) return default;
        var record = _nodes.Records[index];
        var tests = TruthOfTests(record, beliefs);
        return new(required, Kleene.And(requiredConditions, tests), available, Kleene.And(availableConditions, tests));
    }

    /// <summary>The truth of all tests of a record.</summary>
    public static Truth TruthOfTests(Record record, IBeliefs beliefs)
    {
        var truth = Truth.Yes;
        for (var t = 0; t < record.Tests.Count && truth != Truth.No; t++)
            truth = Kleene.And(truth, record.Tests[t].Evaluate(beliefs, record.Binding));
        return truth;
    }

    /// <summary>A level as a truth.</summary>
    public static Truth TruthOf(Assurance level) =>
        level switch { Assurance.Sure => Truth.Yes, Assurance.No => Truth.No, _ => Truth.Unknown };

    private ContributionLabel OfContribution(int index, bool withRanks)
    {
        var contribution = _nodes.Contributions[index];
        var record = _nodes.Records[contribution.Record];
        ref readonly var label = ref labels.Records[contribution.Record];
        var available = label.Available(contribution.Effect);
        if (available == Assurance.No) return default;
        var required = label.Required(record, contribution.Effect);
        var value = contribution.Value?.Evaluate(beliefs, record.Binding) ?? default;
        var settled = true;
        foreach (var read in graph.ValueReads[index]) settled &= IsSettled(read);
        return new(required, available, value, withRanks ? RankOf(index) : default, settled);
    }

    private RankRange RankOf(int contribution)
    {
        var rank = graph.HasEvidence[contribution] ? RankRange.Neutral : RankRange.Exactly(Source.Stated);
        foreach (var source in graph.RankedBy[contribution])
        {
            var (sort, index) = _nodes.Locate(source);
            rank = RankRange.Weakest(rank, sort switch
            {
                NodeSort.Atom => labels.Atoms[index].Rank,
                NodeSort.Fact => labels.Facts[index].Rank,
                _ => labels.Demands[index].Rank,
            });
        }

        return rank;
    }

    private bool IsSettled(int node)
    {
        var (sort, index) = _nodes.Locate(node);
        return sort switch
        {
            NodeSort.Atom => labels.Atoms[index].Truth != Truth.Unknown,
            NodeSort.Fact => labels.Facts[index].Value.IsPoint,
            _ => labels.Demands[index].Demanded.IsPoint,
        };
    }

    private FactLabel OfFact(int index)
    {
        _candidates.Clear();
        foreach (var contributor in graph.Contributors[_nodes.FactNode(index)])
        {
            ref readonly var label = ref labels.Contributions[contributor];
            if (label.Available > Assurance.No)
                _candidates.Add(new(label.Value, label.Rank, label.Required == Assurance.Sure, label.IsSettled));
        }

        return FactMerge.Merge(_nodes.Facts[index].Fact, labels.Observations[index], _candidates);
    }

    private DemandLabel OfDemand(int index)
    {
        var merge = new DemandMerge(_nodes.Demands[index].Fact);
        foreach (var contributor in graph.Contributors[_nodes.DemandNode(index)])
        {
            ref readonly var label = ref labels.Contributions[contributor];
            if (label.Available == Assurance.No) continue;
            var isAtMost = ((Conclusion.Demand)_nodes.Contributions[contributor].Effect.Conclusion!).IsAtMost;
            merge.Add(label.Value.Quantity, isAtMost, label.Required == Assurance.Sure, label.Rank);
        }

        return merge.ToLabel();
    }

    private static Assurance Max(Assurance a, Assurance b) => a > b ? a : b;

    private static Assurance Min(Assurance a, Assurance b) => a < b ? a : b;
}
