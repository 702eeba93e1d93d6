using ProcedureRules.Beliefs;
using ProcedureRules.Inference;

namespace ProcedureRules.Planning;

/// <summary>
/// In which round each atom is first supported, from the statements on. A reason of a lower round rests on none of a higher one, so that
/// what supports itself in a ring is never given as its own reason.
/// </summary>
internal sealed class Grounds
{
    private readonly BeliefState _beliefs;
    private readonly Dictionary<Atom, int> _rounds = [];

    public Grounds(BeliefState beliefs)
    {
        _beliefs = beliefs;
        var readers = new Dictionary<Atom, List<Record>>();
        var missing = new Dictionary<Record, int>(ReferenceEqualityComparer.Instance);
        var now = new List<Record>();
        foreach (var record in beliefs.Network.Records)
        {
            var premises = record.Premises.Distinct().Where(premise => !IsStated(premise)).ToList();
            missing[record] = premises.Count;
            if (premises.Count == 0) now.Add(record);
            foreach (var premise in premises)
            {
                if (!readers.TryGetValue(premise, out var list)) readers[premise] = list = [];
                list.Add(record);
            }
        }
        for (var round = 1; now.Count > 0; round++)
        {
            var next = new List<Record>();
            foreach (var record in now)
                for (var i = 0; i < record.Effects.Count; i++)
                {
                    if (record.Effects[i].Atom is not { } atom || beliefs.Available(record, i) == Assurance.No || !_rounds.TryAdd(atom, round)) continue;
                    if (!readers.TryGetValue(atom, out var waiting)) continue;
                    foreach (var reader in waiting)
                        if (--missing[reader] == 0) next.Add(reader);
                }
            now = next;
        }
    }

    /// <summary>The effects that support an atom without resting on it, the firmest first, then the lowest round.</summary>
    public IEnumerable<RecordEffect> Of(Atom atom)
    {
        var own = _rounds.GetValueOrDefault(atom, int.MaxValue);
        return _beliefs.Network.RecordsSupporting(atom)
            .Select(support => (Support: support, Level: _beliefs.Available(support.Record, support.Index), Round: RoundOf(support.Record)))
            .Where(entry => entry.Level > Assurance.No && entry.Round < own)
            .OrderByDescending(entry => entry.Level).ThenBy(entry => entry.Round)
            .ThenBy(entry => RecordName.Of(entry.Support.Record), StringComparer.Ordinal)
            .Select(entry => entry.Support);
    }

    private int RoundOf(Record record) => record.Premises.Select(premise => IsStated(premise) ? 0 : _rounds.GetValueOrDefault(premise, int.MaxValue)).DefaultIfEmpty().Max();

    // What is stated needs no support; a relation may be stated and concluded.
    private bool IsStated(Atom atom) => atom is Atom.Exists or Atom.Asked or Atom.Chosen
        || (atom is Atom.Related && _beliefs.Network.RecordsSupporting(atom).Count == 0);
}
