using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Plans;

namespace ProcedureRules.Asking;

/// <summary>What an atom or effect that is only possible hangs on: the conditions that are not known, and the keys they read.</summary>
internal sealed class Settling(BeliefState beliefs)
{
    private readonly Dictionary<Atom, IReadOnlyList<(Wording Text, IReadOnlyList<Reading> Readings)>> _ofAtoms = [];
    private readonly Dictionary<Record, List<(string Text, IReadOnlyList<Reading> Readings)>> _unknown = [];

    /// <summary>The unknown conditions behind an atom, in words, without those of what is sure anyway.</summary>
    public IReadOnlyList<(Wording Text, IReadOnlyList<Reading> Readings)> Of(Atom atom)
    {
        if (!_ofAtoms.TryGetValue(atom, out var found))
        {
            var walk = new Walk(this);
            walk.From(atom);
            _ofAtoms[atom] = found = walk.Found;
        }

        return found;
    }

    /// <summary>The unknown conditions of one record, and behind its premises.</summary>
    public IReadOnlyList<(Wording Text, IReadOnlyList<Reading> Readings)> Of(RecordEffect effect)
    {
        var walk = new Walk(this);
        walk.From(effect.Record);
        return walk.Found;
    }

    private List<(string Text, IReadOnlyList<Reading> Readings)> UnknownOf(Record record)
    {
        if (_unknown.TryGetValue(record, out var unknown)) return unknown;
        _unknown[record] = unknown = [];
        for (var i = 0; i < record.Tests.Count; i++)
            if (beliefs.TruthOf(record, i) == Truth.Unknown)
                unknown.Add((Words.Condition(record, record.Tests[i]), [.. record.Tests[i].Reads(record.Binding, beliefs.PartsOf)]));
        return unknown;
    }

    /// <summary>One way back through what supports something, each condition told once.</summary>
    private sealed class Walk(Settling settling)
    {
        private readonly BeliefState _beliefs = settling.Beliefs;
        private readonly HashSet<Atom> _seen = [];
        private readonly HashSet<string> _told = [];

        public List<(Wording Text, IReadOnlyList<Reading> Readings)> Found { get; } = [];

        public void From(Record record)
        {
            foreach (var (text, readings) in settling.UnknownOf(record)) Add(text, readings);
            foreach (var premise in record.Premises) From(premise);
        }

        public void From(Atom atom)
        {
            var level = _beliefs.Available(atom);
            if (level is Assurance.No or Assurance.Sure || !_seen.Add(atom)) return;
            switch (atom)
            {
                case Atom.Exists exists:
                    Add($"the vehicle has the {exists.Part.Text}", [new Reading.OfPart(exists.Part)]);
                    return;
                case Atom.Related related when _beliefs.Network.RecordsSupporting(atom).Count == 0:
                    Add(Words.Relation(related.Relation, related.A, related.B), [new Reading.OfRelation(related.Relation, related.A, related.B)]);
                    return;
            }
            foreach (var support in _beliefs.Network.RecordsSupporting(atom))
                if (_beliefs.Available(support.Record, support.Index) == level) From(support.Record);
        }

        private void Add(string text, IReadOnlyList<Reading> readings)
        {
            if (_told.Add(text)) Found.Add((new Wording(text), readings));
        }
    }

    private BeliefState Beliefs => beliefs;
}
