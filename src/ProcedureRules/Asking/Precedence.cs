using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;

namespace ProcedureRules.Asking;

/// <summary>
/// Which inquiries can wait for others: where every rule that reads a key takes it together with something else that is not known either and is
/// asked before, that answer may settle the rule, and nobody has to find out both.
/// </summary>
internal sealed class Precedence
{
    private readonly BeliefState _beliefs;
    private readonly Func<Record, bool> _counts;
    private readonly Openness _openness;
    private readonly Settling _settling;
    private readonly HashSet<Reading> _first = [];
    private readonly Dictionary<Record, IReadOnlyList<(HashSet<Reading> Direct, HashSet<Reading> Open)>> _conditions = [];

    private Precedence(BeliefState beliefs, Settling settling, Func<Record, bool> counts) =>
        (_beliefs, _counts, _openness, _settling) = (beliefs, counts, new Openness(beliefs), settling);

    /// <summary>Says of each inquiry, in their order, which others go before it.</summary>
    /// <param name="beliefs">What is believed.</param>
    /// <param name="settling">What settles things under them.</param>
    /// <param name="inquiries">The inquiries.</param>
    /// <param name="isFoundAnyway">Whether the work finds a key out anyway: such go first.</param>
    /// <param name="counts">Which records count.</param>
    public static void Settle(BeliefState beliefs, Settling settling, IReadOnlyList<Inquiry> inquiries, Func<Reading, bool> isFoundAnyway, Func<Record, bool> counts)
    {
        var precedence = new Precedence(beliefs, settling, counts);
        var found = inquiries.Where(inquiry => isFoundAnyway(inquiry.About)).ToHashSet();
        precedence._first.UnionWith(found.Select(inquiry => inquiry.About));
        foreach (var inquiry in inquiries)
        {
            if (found.Contains(inquiry)) continue;
            var before = new HashSet<Reading>();
            if (!inquiry.StandsAlone && precedence.Waits(inquiry.About, [], before)) inquiry.After = [.. before];
            else precedence._first.Add(inquiry.About);
        }
    }

    private bool Waits(Reading reading, HashSet<Reading> seen, HashSet<Reading> before)
    {
        // In a ring of facts there is no telling what goes first.
        if (!seen.Add(reading)) return false;
        foreach (var record in _beliefs.Network.Readers(reading))
        {
            if (!IsPossible(record) || !_counts(record)) continue;
            var conditions = Conditions(record);
            var others = conditions.Where(condition => !condition.Direct.Contains(reading)).SelectMany(condition => condition.Open).Where(_first.Contains).ToList();
            if (others.Count > 0)
            {
                before.UnionWith(others);
                continue;
            }

            // A condition that is settled reads it no more; what is reckoned with it does.
            if (conditions.Count > 0 && !conditions.Any(condition => condition.Direct.Contains(reading)) && Set(record).Count == 0) continue;
            if (Set(record) is not { Count: > 0 } set || !set.TrueForAll(next => Waits(next, seen, before))) return false;
        }

        return true;
    }

    private bool IsPossible(Record record)
    {
        for (var i = 0; i < record.Effects.Count; i++)
            if (_beliefs.Available(record, i) > Assurance.No) return true;
        return false;
    }

    // Only what a record sets is followed: what it concludes besides is a matter of its own.
    private static List<Reading> Set(Record record) => record.Effects.All(effect => effect.Conclusion is Conclusion.Set or Conclusion.Demand)
        ? [.. record.Effects.Select(effect => effect.Conclusion is Conclusion.Set ? (Reading)new Reading.OfFact(effect.Fact!.Value) : new Reading.OfDemand(effect.Fact!.Value))]
        : [];

    // What is open of a record: each of its conditions that is not known, and what its premises hang on.
    private IReadOnlyList<(HashSet<Reading> Direct, HashSet<Reading> Open)> Conditions(Record record)
    {
        if (_conditions.TryGetValue(record, out var known)) return known;
        var conditions = new List<(HashSet<Reading>, HashSet<Reading>)>();
        for (var i = 0; i < record.Tests.Count; i++)
        {
            if (_beliefs.TruthOf(record, i) != Truth.Unknown) continue;
            HashSet<Reading> direct = [.. record.Tests[i].Reads(record.Binding, _beliefs.PartsOf)];
            conditions.Add((direct, [.. _openness.Behind(direct)]));
        }

        foreach (var premise in record.Premises)
            foreach (var (_, readings) in _settling.Of(premise)) conditions.Add(([.. readings], [.. _openness.Behind(readings)]));
        return _conditions[record] = conditions;
    }
}
