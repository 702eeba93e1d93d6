using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Plans;

namespace ProcedureRules.Asking;

/// <summary>What an atom or effect that is only possible hangs on: the conditions that are not known, and the keys they read.</summary>
internal sealed class Settling(BeliefState beliefs)
{
    /// <summary>The unknown conditions behind an atom, in words, without those of what is sure anyway.</summary>
    public IReadOnlyList<(Wording Text, IReadOnlyList<Reading> Readings)> Of(Atom atom)
    {
        var found = new List<(Wording, IReadOnlyList<Reading>)>();
        Walk(atom, [], found);
        return found;
    }

    /// <summary>The unknown conditions of one record, and behind its premises.</summary>
    public IReadOnlyList<(Wording Text, IReadOnlyList<Reading> Readings)> Of(RecordEffect effect)
    {
        var found = new List<(Wording, IReadOnlyList<Reading>)>();
        Walk(effect.Record, [], found);
        return found;
    }

    private void Walk(Atom atom, HashSet<Atom> seen, List<(Wording, IReadOnlyList<Reading>)> found)
    {
        var level = beliefs.Available(atom);
        if (level is Assurance.No or Assurance.Sure || !seen.Add(atom)) return;
        switch (atom)
        {
            case Atom.Exists exists:
                Add(found, new Wording($"the vehicle has the {exists.Part.Text}"), [new Reading.OfPart(exists.Part)]);
                return;
            case Atom.Related related when beliefs.Network.RecordsSupporting(atom).Count == 0:
                Add(found, new Wording(Words.Relation(related.Relation, related.A, related.B)), [new Reading.OfRelation(related.Relation, related.A, related.B)]);
                return;
        }
        foreach (var support in beliefs.Network.RecordsSupporting(atom))
            if (beliefs.Available(support.Record, support.Index) == level) Walk(support.Record, seen, found);
    }

    private void Walk(Record record, HashSet<Atom> seen, List<(Wording, IReadOnlyList<Reading>)> found)
    {
        for (var i = 0; i < record.Tests.Count; i++)
        {
            if (beliefs.TruthOf(record, i) != Truth.Unknown) continue;
            var test = record.Tests[i];
            Add(found, new Wording(Words.Condition(record, test)), [.. test.Reads(record.Binding, beliefs.PartsOf)]);
        }
        foreach (var premise in record.Premises) Walk(premise, seen, found);
    }

    private static void Add(List<(Wording Text, IReadOnlyList<Reading>)> found, Wording text, IReadOnlyList<Reading> readings)
    {
        if (!found.Any(other => other.Text.ToString() == text.ToString())) found.Add((text, readings));
    }
}
