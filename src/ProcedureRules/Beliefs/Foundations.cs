using ProcedureRules.Inference;
using ProcedureRules.Language;

namespace ProcedureRules.Beliefs;

/// <summary>
/// Finds what an atom rests on in the end: for each atom the round in which it first comes up when one starts from what is stated. A support
/// of a lower round never rests on the atom itself, whatever rings there are (W. Dowling and J. Gallier, Linear-time algorithms for testing
/// the satisfiability of propositional Horn formulae, 1984). Each level has rounds of its own: what makes an atom sure is not what first makes
/// it possible. Moments count as met. Not for several threads at once.
/// </summary>
/// <param name="beliefs">What is believed.</param>
/// <param name="admits">Which records count; null: all.</param>
internal sealed class Foundations(BeliefState beliefs, Func<Record, bool>? admits = null)
{
    private readonly NodeIndex _nodes = beliefs.Network.Graph.Nodes;
    private readonly Dictionary<Assurance, int[]> _rounds = [];

    /// <summary>Whether an atom has a level without any record.</summary>
    public bool IsStated(Atom atom, Assurance level) => beliefs.Stated(atom) >= level;

    /// <summary>The effects that give an atom a level without resting on it, the lowest round first, then in the order of the records.</summary>
    public IEnumerable<RecordEffect> SupportsOf(Atom atom, Assurance level)
    {
        var rounds = RoundsOf(level);
        return beliefs.Network.RecordsSupporting(atom)
            .Where(support => beliefs.Available(support.Record, support.Index) >= level && Admits(support.Record))
            .Select(support => (Support: support, Round: RoundOf(support.Record, rounds, level)))
            .Where(founded => founded.Round < rounds[_nodes.Of(atom)])
            .OrderBy(founded => founded.Round)
            .Select(founded => founded.Support);
    }

    /// <summary>All effects that support an atom without resting on it, each with the level it gives and its round there.</summary>
    public IEnumerable<(RecordEffect Effect, Assurance Level, int Round)> SupportsOf(Atom atom)
    {
        foreach (var support in beliefs.Network.RecordsSupporting(atom))
        {
            var level = beliefs.Available(support.Record, support.Index);
            if (level == Assurance.No || !Admits(support.Record)) continue;
            var rounds = RoundsOf(level);
            var round = RoundOf(support.Record, rounds, level);
            if (round < rounds[_nodes.Of(atom)]) yield return (support, level, round);
        }
    }

    /// <summary>The level that a premise has to have for a record to reach one: a relation may be open where the record may.</summary>
    public static Assurance LevelOfPremise(Atom premise, Assurance level) =>
        premise is Atom.Related && level < Assurance.Sure ? Assurance.Held : level;

    /// <summary>
    /// What to look for first where the steps of a plan are known: what rests on them alone and not on one that is there merely to find something
    /// out; then what rests on them alone; then anything.
    /// </summary>
    public static IReadOnlyList<Foundations> InOrder(BeliefState beliefs, IReadOnlySet<Step>? steps) => steps is null ? [new Foundations(beliefs)] :
    [
        new Foundations(beliefs, record => record.Mechanism != Mechanism.Find && IsWithin(record, steps)),
        new Foundations(beliefs, record => IsWithin(record, steps)),
        new Foundations(beliefs),
    ];

    /// <summary>Whether a record rests on some steps only.</summary>
    public static bool IsWithin(Record record, IReadOnlySet<Step> steps) => record.Premises.All(premise => premise is not Atom.Occurs occurs || steps.Contains(occurs.Step));

    private bool Admits(Record record) => admits is null || admits(record);

    private int[] RoundsOf(Assurance level)
    {
        if (_rounds.TryGetValue(level, out var known)) return known;
        var rounds = new int[_nodes.Atoms.Count];
        var reached = new Queue<int>();
        for (var atom = 0; atom < rounds.Length; atom++)
        {
            rounds[atom] = IsStated(_nodes.Atoms[atom], level) ? 0 : int.MaxValue;
            if (rounds[atom] == 0) reached.Enqueue(atom);
        }

        var waiting = new int[_nodes.Records.Count];
        var readers = new List<(int, int)>();
        for (var record = 0; record < waiting.Length; record++)
        {
            foreach (var premise in beliefs.Network.Graph.Premises[record])
            {
                if (LevelOfPremise(_nodes.Atoms[premise], level) != level) continue;
                waiting[record]++;
                readers.Add((premise, record));
            }

            if (waiting[record] == 0) Conclude(record);
        }

        // Atoms come off the queue in the order of their rounds, so the first record that is complete is one of the lowest round.
        var readersOf = Rows<int>.Of(rounds.Length, readers);
        while (reached.TryDequeue(out var atom))
        {
            foreach (var record in readersOf[atom])
                if (--waiting[record] == 0) Conclude(record);
        }

        return _rounds[level] = rounds;

        void Conclude(int index)
        {
            var record = _nodes.Records[index];
            if (!Admits(record)) return;
            for (var e = 0; e < record.Effects.Count; e++)
            {
                if (record.Effects[e].Atom is not { } atom || beliefs.Available(record, e) < level) continue;
                ref var round = ref rounds[_nodes.Of(atom)];
                if (round < int.MaxValue) continue;
                round = RoundOf(record, rounds, level) + 1;
                reached.Enqueue(_nodes.Of(atom));
            }
        }
    }

    private int RoundOf(Record record, int[] rounds, Assurance level)
    {
        var round = 0;
        foreach (var premise in record.Premises)
            if (LevelOfPremise(premise, level) == level) round = Math.Max(round, rounds[_nodes.Of(premise)]);
        return round;
    }
}
