using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;

namespace ProcedureRules.Choosing;

/// <summary>The steps of a network with their labour, and what they come to under some beliefs.</summary>
internal sealed class LabourBook
{
    private readonly Entry[] _entries;

    public LabourBook(BeliefNetwork network)
    {
        var slower = network.RecordsWith<Conclusion.Slower>().Where(source => source.Record.Moments.Count == 0)
            .ToLookup(source => source.Record.Binding.Step(((Conclusion.Slower)source.Effect.Conclusion!).Step));
        _entries = [.. network.AtomsOf<Atom.Occurs>().Select(atom => new Entry(atom, network.Graph.Nodes.Of(atom), [.. slower[atom.Step]]))];
    }

    /// <summary>How many kinds of step there are.</summary>
    public int Count => _entries.Length;

    /// <summary>What is required under some beliefs.</summary>
    public Cost Of(BeliefState beliefs)
    {
        long least = 0, most = 0, drawn = 0;
        foreach (var entry in _entries)
        {
            var required = beliefs.Required(entry.Atom);
            if (required >= Assurance.Provisional)
            {
                var (low, high) = Time(entry, beliefs, isBound: false);
                if (required >= Assurance.Protective) least += low;
                most += high;
            }
            else if (beliefs.Available(entry.Atom) >= Assurance.Provisional)
            {
                drawn += Time(entry, beliefs, isBound: false).High;
            }
        }

        return new Cost(least, most, drawn);
    }

    /// <summary>
    /// What each kind of step comes to at least, however the choices still open are made: only what is settled counts, each time at its least
    /// over them.
    /// </summary>
    public (long Least, long Most)[] Sure(BeliefState beliefs, Unsettled unsettled)
    {
        var sure = new (long, long)[_entries.Length];
        for (var i = 0; i < _entries.Length; i++)
        {
            var required = beliefs.Required(_entries[i].Atom);
            if (required < Assurance.Provisional || !unsettled.IsSettled(required, _entries[i].Node)) continue;
            var (low, high) = Time(_entries[i], beliefs, isBound: true);
            sure[i] = (required >= Assurance.Protective ? low : 0, high);
        }

        return sure;
    }

    // A factor that is sure stays, and its low end only rises as choices are made; the high end, and factors that are only possible, may go.
    private static (long Low, long High) Time(Entry entry, BeliefState beliefs, bool isBound)
    {
        var operation = entry.Atom.Step.Operation;
        if (entry.Slower.Length == 0) return (entry.Low, entry.High);
        var slowed = new Slowness(beliefs);
        foreach (var source in entry.Slower)
        {
            var level = beliefs.Given(source.Record, source.Index, entry.Atom.Step);
            if (level == Assurance.Sure || (level > Assurance.Held && !isBound))
                slowed.Add((Conclusion.Slower)source.Effect.Conclusion!, source.Record, level == Assurance.Sure);
        }

        var range = operation.OfAll(slowed.Of(operation.Time));
        return (Milliseconds(range.Low), Milliseconds(isBound ? slowed.Least(operation.Labour.High) : range.High));
    }

    private static long Milliseconds(double seconds) => (long)Math.Round(Math.Clamp(seconds, 0, 1e12) * 1000);

    private sealed record Entry(Atom.Occurs Atom, int Node, RecordEffect[] Slower)
    {
        public long Low { get; } = Milliseconds(Atom.Step.Operation.Labour.Low);

        public long High { get; } = Milliseconds(Atom.Step.Operation.Labour.High);
    }
}
