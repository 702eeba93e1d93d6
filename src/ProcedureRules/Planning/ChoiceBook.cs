using ProcedureRules.Beliefs;
using ProcedureRules.Inference;

namespace ProcedureRules.Planning;

/// <summary>The choices of a network with their ways, in an order of their own, so that the order of the records does not matter.</summary>
internal sealed class ChoiceBook
{
    private readonly Dictionary<ChoiceKey, IReadOnlyList<ChoiceOption>> _options = [];

    public ChoiceBook(BeliefNetwork network)
    {
        var records = new Dictionary<(ChoiceKey, int), List<Record>>();
        foreach (var record in network.Records)
            foreach (var premise in record.Premises)
            {
                if (premise is not Atom.Chosen chosen) continue;
                if (!records.TryGetValue((chosen.Choice, chosen.Option), out var list)) records[(chosen.Choice, chosen.Option)] = list = [];
                list.Add(record);
            }
        Keys = [.. network.AtomsOf<Atom.Open>().Select(open => open.Choice).Distinct().OrderBy(Name, StringComparer.Ordinal)];
        foreach (var key in Keys)
        {
            var written = (key as ChoiceKey.OfRule is { } rule) ? rule.Options : null;
            var count = written?.Count ?? records.Keys.Where(entry => entry.Item1.Equals(key)).Select(entry => entry.Item2 + 1).DefaultIfEmpty().Max();
            _options[key] = [.. Enumerable.Range(0, count).Select(i =>
                new ChoiceOption(i, written?[i].Rank ?? 0, records.GetValueOrDefault((key, i)) ?? [], written?[i]))];
        }
    }

    /// <summary>The choices.</summary>
    public IReadOnlyList<ChoiceKey> Keys { get; }

    /// <summary>The ways of a choice, in pack order.</summary>
    public IReadOnlyList<ChoiceOption> Options(ChoiceKey key) => _options[key];

    /// <summary>A name that tells choices apart and orders them.</summary>
    public static string Name(ChoiceKey key) => key switch
    {
        ChoiceKey.OfRule rule => $"{rule.Rule.Name} {string.Join(' ', Enumerable.Range(0, rule.Binding.Count).Select(slot => rule.Binding[slot]))} {rule.Conclusion}",
        ChoiceKey.OfWays ways => new GroundState(ways.Part, ways.Aspect, ways.States).ToString(),
        _ => "",
    };
}
