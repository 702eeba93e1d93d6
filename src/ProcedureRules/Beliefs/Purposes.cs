using ProcedureRules.Inference;
using ProcedureRules.Language;

namespace ProcedureRules.Beliefs;

/// <summary>
/// What is there for more than to answer a question: the work that would be possible without the steps that only find something out. What
/// such a step would stop or forbid is no reason to stop or forbid anything: the question is then answered in another way.
/// </summary>
internal sealed class Purposes
{
    private readonly NodeIndex _nodes;
    private readonly Rows<int> _premises;
    private readonly bool[] _has;

    /// <summary>The purposes under some labels, with a step that is done to find something out, or none.</summary>
    public Purposes(Graph graph, Labels labels, Step? check)
    {
        (_nodes, _premises) = (graph.Nodes, graph.Premises);
        _has = new bool[_nodes.Atoms.Count];
        for (var atom = 0; atom < _has.Length; atom++)
            _has[atom] = _nodes.Atoms[atom] is not (Atom.Occurs or Atom.Wanted or Atom.Open) || (check is not null && _nodes.Atoms[atom] is Atom.Occurs occurs && occurs.Step == check);
        for (var isChanging = true; isChanging;)
        {
            isChanging = false;
            for (var atom = 0; atom < _has.Length; atom++)
                if (!_has[atom] && IsServed(graph, labels, atom)) isChanging = _has[atom] = true;
        }
    }

    /// <summary>Whether a record rests on nothing but what has a purpose; one step is taken as done.</summary>
    public bool Serve(Record record, Step? given = null)
    {
        foreach (var premise in _premises[_nodes.Of(record)])
            if (!_has[premise] && !(given is not null && _nodes.Atoms[premise] is Atom.Occurs occurs && occurs.Step == given)) return false;
        return true;
    }

    private bool IsServed(Graph graph, Labels labels, int atom)
    {
        foreach (var (record, effect) in graph.Supports[atom])
        {
            var source = _nodes.Records[record];
            if (source.Mechanism == Mechanism.Find || labels.Records[record].Available(source.Effects[effect]) == Assurance.No) continue;
            var isServed = true;
            foreach (var premise in _premises[record]) isServed &= _has[premise];
            if (isServed) return true;
        }

        return false;
    }
}
