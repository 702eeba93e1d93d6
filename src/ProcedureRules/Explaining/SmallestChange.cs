using ProcedureRules.Asking;
using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Planning;

namespace ProcedureRules.Explaining;

/// <summary>
/// Searches for the fewest facts that bring an item into the plan if they are otherwise: every value that can matter of each fact behind the
/// conditions, alone and then two together. Each find is planned before it is told.
/// </summary>
internal sealed class SmallestChange(BeliefState beliefs, WhyNotTarget target, CancellationToken cancellation)
{
    private const int MostTried = 6000;
    private const int MostPlanned = 120;
    private const int FewestPlanned = 8;
    private const int MostSteps = 6000;
    private const int MostDepth = 4;

    /// <summary>How many finds are planned: the larger the plans, the fewer.</summary>
    private readonly int _mostPlanned = Math.Clamp(MostSteps / Math.Max(1, beliefs.Network.AtomsOf<Atom.Occurs>().Count(atom => beliefs.Required(atom) >= Assurance.Provisional)), FewestPlanned, MostPlanned);
    private int _planned;
    private bool _isCut;

    /// <summary>What the search came to.</summary>
    public ChangeSearch Result { get; private set; } = ChangeSearch.NoneOfTwo;

    /// <summary>How many changes were tried.</summary>
    public int Tried { get; private set; }

    public IReadOnlyList<SupposedFact> Find(IReadOnlyList<Record> records)
    {
        if (!target.IsPossible(AllOpen.Of(beliefs)))
        {
            Result = ChangeSearch.Impossible;
            return [];
        }

        var readings = new List<Reading>();
        foreach (var record in records) Collect(record, 0, [], readings);
        var suppositions = readings.SelectMany(reading => Outcomes.OfAny(beliefs, reading).Where(beliefs.Network.Covers).Select(answer => (Reading: reading, Answer: answer))).ToList();
        foreach (var one in suppositions)
            if (Brings([one.Answer])) return Found(one);
        for (var first = 0; first < suppositions.Count; first++)
        {
            for (var second = first + 1; second < suppositions.Count; second++)
            {
                if (suppositions[first].Reading == suppositions[second].Reading) continue;
                if (Brings([suppositions[first].Answer, suppositions[second].Answer])) return Fewest(suppositions[first], suppositions[second]);
                if (Result == ChangeSearch.Unfinished) return [];
            }
        }

        if (_isCut) Result = ChangeSearch.Unfinished;
        return [];
    }

    private bool Brings(IReadOnlyList<Supposition> change)
    {
        cancellation.ThrowIfCancellationRequested();
        if (Tried >= MostTried || _planned >= _mostPlanned) Result = ChangeSearch.Unfinished;
        if (Result == ChangeSearch.Unfinished) return false;
        Tried++;
        var supposed = beliefs.With(change);
        if (!target.IsWithinReach(supposed)) return false;
        _planned++;
        return IsPlanned(supposed);
    }

    private bool IsPlanned(BeliefState supposed) => Planner.Plan(supposed, cancellation).Plan is { } plan && target.IsIn(plan);

    // What seems out of reach under one of two a plan may have after all, and hold before it.
    private IReadOnlyList<SupposedFact> Fewest(params (Reading Reading, Supposition Answer)[] both)
    {
        foreach (var one in both)
            if (IsPlanned(beliefs.With([one.Answer]))) return Found(one);
        return Found(both);
    }

    private IReadOnlyList<SupposedFact> Found(params (Reading Reading, Supposition Answer)[] changes)
    {
        Result = ChangeSearch.Found;
        return [.. changes.Select(Tell)];
    }

    private SupposedFact Tell((Reading Reading, Supposition Answer) change) =>
        new(QuestionWriter.IdOf(change.Reading), Outcomes.TextOfAny(beliefs, change.Reading, change.Answer), change.Answer);

    // What the conditions of a record rest on, and those behind its premises: facts that somebody can state.
    private void Collect(Record record, int depth, HashSet<object> seen, List<Reading> readings)
    {
        if (depth > MostDepth) _isCut = true;
        if (depth > MostDepth || !seen.Add(record)) return;
        foreach (var reading in beliefs.Network.ReadingsOf(record)) Collect(reading, depth, seen, readings);
        foreach (var premise in record.Premises)
            foreach (var support in beliefs.Network.RecordsSupporting(premise)) Collect(support.Record, depth + 1, seen, readings);
    }

    private void Collect(Reading reading, int depth, HashSet<object> seen, List<Reading> readings)
    {
        if (!seen.Add(reading)) return;
        var key = reading switch { Reading.OfFact fact => fact.Key, Reading.OfDemand demand => demand.Key, _ => (FactKey?)null };
        if (key is { } derived && (derived.Fact.IsDerived || derived.Fact.IsDemand))
        {
            foreach (var source in beliefs.Network.RecordsWith<Conclusion.Set>().Concat(beliefs.Network.RecordsWith<Conclusion.Demand>()))
                if (source.Effect.Fact == derived) Collect(source.Record, depth + 1, seen, readings);
        }
        else if (!readings.Contains(reading) && Outcomes.OfAny(beliefs, reading).Any(beliefs.Network.Covers))
        {
            readings.Add(reading);
        }
    }
}
