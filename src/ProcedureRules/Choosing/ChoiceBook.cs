using System.Runtime.CompilerServices;
using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;

namespace ProcedureRules.Choosing;

/// <summary>
/// The choices of a network with their ways, in an order of their own, so that the order of the records does not matter. Made once for a
/// network, which every hypothesis is planned on anew; safe on many threads.
/// </summary>
internal sealed class ChoiceBook
{
    private static readonly ConditionalWeakTable<BeliefNetwork, ChoiceBook> Books = [];
    private readonly Dictionary<ChoiceKey, IReadOnlyList<ChoiceOption>> _options = [];

    private ChoiceBook(BeliefNetwork network)
    {
        var records = new Dictionary<(ChoiceKey, int), List<Record>>();
        foreach (var record in network.Records)
            foreach (var premise in record.Premises)
            {
                if (premise is not Atom.Chosen chosen) continue;
                if (!records.TryGetValue((chosen.Choice, chosen.Option), out var list)) records[(chosen.Choice, chosen.Option)] = list = [];
                list.Add(record);
            }
        Keys = [.. network.AtomsOf<Atom.Open>().Select(open => open.Choice).Distinct().OrderBy(RecordName.OfChoice, StringComparer.Ordinal)];
        Network = network;
        Labour = new LabourBook(network);
        Reach = new Reach(network);
        foreach (var key in Keys)
        {
            var written = (key as ChoiceKey.OfRule is { } rule) ? rule.Options : null;
            var count = written?.Count ?? records.Keys.Where(entry => entry.Item1.Equals(key)).Select(entry => entry.Item2 + 1).DefaultIfEmpty().Max();
            _options[key] = [.. Enumerable.Range(0, count).Select(i =>
                new ChoiceOption(i, written?[i].Rank ?? 0, records.GetValueOrDefault((key, i)) ?? [], written?[i], ReadsOf(network, written?[i], key)))];
        }
    }

    /// <summary>The book of a network.</summary>
    public static ChoiceBook Of(BeliefNetwork network) => Books.GetValue(network, static network => new ChoiceBook(network));

    /// <summary>The choices.</summary>
    public IReadOnlyList<ChoiceKey> Keys { get; }

    /// <summary>The network.</summary>
    public BeliefNetwork Network { get; }

    /// <summary>The times of the steps.</summary>
    public LabourBook Labour { get; }

    /// <summary>What the choices reach in the network.</summary>
    public Reach Reach { get; }

    /// <summary>How far the rank of a way lies behind the first rank of its choice.</summary>
    public int StepsDown(ChoiceKey key, int option) => Options(key)[option].Rank - Options(key).Min(way => way.Rank);

    /// <summary>The ways of a choice, in pack order.</summary>
    public IReadOnlyList<ChoiceOption> Options(ChoiceKey key) => _options[key];

    private static IReadOnlyList<int> ReadsOf(BeliefNetwork network, Option? option, ChoiceKey key) =>
        option?.If is { } condition && key is ChoiceKey.OfRule rule
            ? [.. condition.Reads(rule.Binding, network.PartsOf).Select(network.Graph.Nodes.NodeOf).Where(node => node >= 0)]
            : [];
}
