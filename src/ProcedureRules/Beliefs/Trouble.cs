using ProcedureRules.Facts;
using ProcedureRules.Language;

namespace ProcedureRules.Beliefs;

/// <summary>Collects what contradicts itself in a labelled network.</summary>
internal static class Trouble
{
    public static IReadOnlyList<Conflict> ConflictsIn(Graph graph, Labels labels, Situation situation)
    {
        var conflicts = new List<Conflict>();
        for (var fact = 0; fact < graph.Nodes.Facts.Count; fact++)
        {
            if (!labels.Facts[fact].IsConflict) continue;
            var key = graph.Nodes.Facts[fact];
            var concluded = new List<FactMerge.Candidate>();
            foreach (var contributor in graph.Contributors[graph.Nodes.FactNode(fact)])
                if (labels.Contributions[contributor] is { Required: Assurance.Sure } label) concluded.Add(new(label.Value, label.Rank, true, label.IsSettled));
            conflicts.Add(new(new Reading.OfFact(key), FactMerge.Contradicting(key.Fact, labels.Observations[fact], concluded)));
        }

        // What was supposed since is no longer what was stated.
        foreach (var (atom, input) in Statements.Contradictory(situation))
            if (graph.Nodes.Of(atom) is var index and >= 0 && labels.Inputs[index] == input) conflicts.Add(new(Statements.ReadingOf(atom), [Value.Of(false), Value.Of(true)]));
        return conflicts;
    }

    public static IReadOnlyList<EmptyBand> EmptyBandsIn(Graph graph, Labels labels)
    {
        var bands = new List<EmptyBand>();
        for (var demand = 0; demand < graph.Nodes.Demands.Count; demand++)
        {
            if (!labels.Demands[demand].IsEmpty) continue;
            var demands = new List<RecordEffect>();
            foreach (var contributor in graph.Contributors[graph.Nodes.DemandNode(demand)])
            {
                if (labels.Contributions[contributor].Required < Assurance.Sure) continue;
                var contribution = graph.Nodes.Contributions[contributor];
                demands.Add(new(graph.Nodes.Records[contribution.Record], contribution.Index));
            }

            bands.Add(new(graph.Nodes.Demands[demand], labels.Demands[demand].Band, demands));
        }

        return bands;
    }
}
