using ProcedureRules.Beliefs;
using ProcedureRules.Choosing;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Ordering;
using ProcedureRules.Plans;

namespace ProcedureRules.Planning;

/// <summary>The assumed facts and relations that the steps of a plan rest on.</summary>
internal sealed class AssumptionList
{
    private readonly BeliefState _beliefs;
    private readonly HashSet<FactKey> _observed;
    private readonly Dictionary<FactKey, Wording> _wordings = [];
    private readonly ItemList _items = new();

    private AssumptionList(BeliefState beliefs)
    {
        _beliefs = beliefs;
        _observed = [.. beliefs.Network.Result.Situation.Observations.Select(observation => observation.Fact)];
    }

    public static IReadOnlyList<PlanItem> Of(BeliefState beliefs, IReadOnlyList<Occurrence> occurrences)
    {
        var list = new AssumptionList(beliefs);
        var together = new Together(occurrences.Select(occurrence => occurrence.Work.Step));
        foreach (var occurrence in occurrences)
        {
            var step = occurrence.Work.Step;
            var seen = new Seen([], []);
            list.Walk(new Atom.Occurs(step), occurrence.Id, seen);
            foreach (var (source, _) in beliefs.SaidOf(step))
                if (together.Has(source.Record)) list.Read(source.Record, occurrence.Id, seen);
        }
        return list._items.ToItems();
    }

    private void Walk(Atom atom, string step, Seen seen)
    {
        if (!seen.Atoms.Add(atom)) return;
        if (atom is Atom.Related related && _beliefs.SourceOf(related) == Source.Assumed)
            _items.Add(new Wording(Words.Relation(related.Relation, related.A, related.B)), step, false, null);
        foreach (var support in _beliefs.Network.RecordsSupporting(atom))
            if (_beliefs.Available(support.Record, support.Index) > Assurance.No) Read(support.Record, step, seen);
    }

    private void Read(Record record, string step, Seen seen)
    {
        foreach (var reading in _beliefs.Network.ReadingsOf(record))
        {
            // What rules work out of assumptions is not looked at: what they assume is.
            if (reading is Reading.OfDemand { Key: var demanded })
            {
                ReadSetters(demanded, step, seen);
                continue;
            }

            if (reading is not Reading.OfFact { Key: var key } || _beliefs.SourceOf(key) != Source.Assumed) continue;
            if (!_observed.Contains(key)) ReadSetters(key, step, seen);
            else _items.Add(WordingOf(key), step, false, null);
        }

        // Another step's own assumptions are listed with that step.
        foreach (var premise in record.Premises)
            if (premise is not Atom.Occurs) Walk(premise, step, seen);
    }

    private Wording WordingOf(FactKey key)
    {
        if (!_wordings.TryGetValue(key, out var wording))
            _wordings[key] = wording = new Wording(units => $"{key.Part.Text} {Words.Name(key.Fact.Name)}: {_beliefs.Fact(key.Part, key.Fact).In(units)}");
        return wording;
    }

    private void ReadSetters(FactKey key, string step, Seen seen)
    {
        if (!seen.Facts.Add(key)) return;
        foreach (var setter in _beliefs.SettersOf(key)) Read(setter, step, seen);
    }

    /// <summary>What has been looked at for one step.</summary>
    private readonly record struct Seen(HashSet<Atom> Atoms, HashSet<FactKey> Facts);
}
