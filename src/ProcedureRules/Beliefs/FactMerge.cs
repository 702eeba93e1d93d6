using ProcedureRules.Facts;
using ProcedureRules.Packs;

namespace ProcedureRules.Beliefs;

/// <summary>
/// Merges what is observed and concluded of one fact. In every case that the open facts leave, the best ranked of what holds there has the
/// word; equals that agree narrow each other, equals that contradict each other are read as the hull. The result holds all those cases.
/// </summary>
internal static class FactMerge
{
    /// <summary>Something that is said of a fact.</summary>
    /// <param name="Value">What is said.</param>
    /// <param name="Rank">How it can rank.</param>
    /// <param name="IsSure">Whether it holds in every case.</param>
    /// <param name="IsSettled">Whether its value is the same in every case.</param>
    internal readonly record struct Candidate(Value Value, RankRange Rank, bool IsSure, bool IsSettled);

    /// <summary>Merges; the list of conclusions is used up.</summary>
    public static FactLabel Merge(FactDefinition fact, IReadOnlyList<Observation> observations, List<Candidate> candidates)
    {
        AddObservations(fact, observations, candidates);
        Source? best = null;
        foreach (var candidate in candidates)
            if (candidate.IsSure && !(candidate.Rank.Low <= best)) best = candidate.Rank.Low;
        if (best is not { } floor) return Unknown(fact, candidates);

        // What cannot come up to the best that is sure never has the word.
        var ceiling = floor;
        for (var c = candidates.Count - 1; c >= 0; c--)
        {
            if (candidates[c].Rank.High < floor) candidates.RemoveAt(c);
            else if (candidates[c].Rank.High > ceiling) ceiling = candidates[c].Rank.High;
        }

        var rank = new RankRange(floor, ceiling);
        var value = candidates.Count == 1 ? candidates[0].Value
            : candidates.TrueForAll(static candidate => candidate is { IsSure: true, IsSettled: true, Rank.IsExact: true }) ? Agreed(candidates)
            : null;
        return new(value ?? Hull(candidates), rank, candidates.Count > 1 && IsContradicted(candidates));
    }

    /// <summary>What contradicts each other of the best ranked statements.</summary>
    public static IReadOnlyList<Value> Contradicting(FactDefinition fact, IReadOnlyList<Observation> observations, List<Candidate> candidates)
    {
        var merged = Merge(fact, observations, candidates);
        return merged.IsConflict ? [.. candidates.Where(c => c.IsSure && c.Rank.IsExact).Select(c => c.Value).Distinct()] : [];
    }

    // An observation that leaves everything open takes lower statements back and says nothing itself.
    private static void AddObservations(FactDefinition fact, IReadOnlyList<Observation> observations, List<Candidate> candidates)
    {
        var unknown = Value.Unknown(fact);
        var silenced = Source.None;
        if (observations.Count == 0) return;
        foreach (var observation in observations)
            if (observation.Source > silenced && !fact.Type.IsText && observation.Value.Contains(unknown)) silenced = observation.Source;
        foreach (var observation in observations)
        {
            if (observation.Source < silenced || observation.Source == Source.None) continue;
            if (!fact.Type.IsText && observation.Value.Contains(unknown)) continue;
            candidates.Add(new(observation.Value, RankRange.Exactly(observation.Source), true, true));
        }
    }

    private static FactLabel Unknown(FactDefinition fact, List<Candidate> candidates)
    {
        var value = Value.Unknown(fact);
        if (fact.Type.IsText && candidates.Count > 0) return new(Hull(candidates), RankRange.Open, false);
        foreach (var candidate in candidates) value = value.Hull(candidate.Value);
        return new(value, RankRange.Open, false);
    }

    private static Value? Agreed(List<Candidate> candidates)
    {
        var common = candidates[0].Value;
        foreach (var candidate in candidates)
        {
            if (common.Intersect(candidate.Value) is not { } narrower) return null;
            common = narrower;
        }

        return common;
    }

    private static Value Hull(List<Candidate> candidates)
    {
        var hull = candidates[0].Value;
        foreach (var candidate in candidates) hull = hull.Hull(candidate.Value);
        return hull;
    }

    private static bool IsContradicted(List<Candidate> candidates)
    {
        Value? common = null;
        foreach (var candidate in candidates)
        {
            if (!candidate.IsSure || !candidate.Rank.IsExact) continue;
            if ((common ?? candidate.Value).Intersect(candidate.Value) is not { } narrower) return true;
            common = narrower;
        }

        return false;
    }
}
