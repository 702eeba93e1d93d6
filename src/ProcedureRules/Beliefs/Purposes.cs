using ProcedureRules.Inference;
using ProcedureRules.Language;

namespace ProcedureRules.Beliefs;

/// <summary>
/// What is there for more than to answer a question: the work that would be possible without the steps that only find something out. What
/// such a step would stop or forbid is no reason to stop or forbid anything: the question is then answered in another way.
/// </summary>
/// <remarks>Worked out where it is asked for. An answer once written down stays, so that threads may work out the same at once.</remarks>
internal sealed class Purposes(Graph graph, Labels labels, Step? check)
{
    private const byte Yes = 1, No = 2;
    private readonly byte[] _has = new byte[graph.Nodes.Atoms.Count];

    /// <summary>Whether a record rests on nothing but what has a purpose; one step is taken as done.</summary>
    public bool Serve(Record record, Step? given = null)
    {
        foreach (var premise in graph.Premises[graph.Nodes.Of(record)])
            if (!(given is not null && IsStep(premise, given)) && !Has(premise)) return false;
        return true;
    }

    private bool Has(int atom)
    {
        if (_has[atom] == 0) Settle(atom);
        return _has[atom] == Yes;
    }

    // All that could serve the atom is looked at together, what was found last first: that is nearest to the job.
    private void Settle(int atom)
    {
        var open = Behind(atom);
        open.Reverse();
        while (open.RemoveAll(IsServed) > 0) { }
        foreach (var unserved in open) _has[unserved] = No;
    }

    private List<int> Behind(int first)
    {
        var (found, seen) = (new List<int>(), new HashSet<int>());
        Enter(first);
        for (var at = 0; at < found.Count; at++)
            foreach (var (record, effect) in graph.Supports[found[at]])
                if (MayServe(record, effect))
                    foreach (var premise in graph.Premises[record]) Enter(premise);
        return found;

        void Enter(int atom)
        {
            if (_has[atom] != 0 || !seen.Add(atom)) return;
            if (graph.Nodes.Atoms[atom] is not (Atom.Occurs or Atom.Wanted or Atom.Open) || (check is not null && IsStep(atom, check))) _has[atom] = Yes;
            else found.Add(atom);
        }
    }

    private bool MayServe(int record, int effect)
    {
        var source = graph.Nodes.Records[record];
        return source.Mechanism != Mechanism.Find && labels.Records[record].Available(source.Effects[effect]) > Assurance.No;
    }

    private bool IsServed(int atom)
    {
        foreach (var (record, effect) in graph.Supports[atom])
        {
            if (!MayServe(record, effect)) continue;
            var isServed = true;
            foreach (var premise in graph.Premises[record]) isServed &= _has[premise] == Yes;
            if (!isServed) continue;
            _has[atom] = Yes;
            return true;
        }

        return false;
    }

    private bool IsStep(int atom, Step step) => graph.Nodes.Atoms[atom] is Atom.Occurs occurs && occurs.Step == step;
}
