using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;

namespace ProcedureRules.Planning;

/// <summary>
/// What is there for more than to answer a question: the atoms that would stand without the steps that only find something out. What such a
/// step would stop is no reason to stop the job: the question is then answered in another way.
/// </summary>
internal sealed class Purposes
{
    private readonly BeliefState _beliefs;
    private readonly HashSet<Atom> _atoms = [];

    private Purposes(BeliefState beliefs, Step? check)
    {
        _beliefs = beliefs;
        if (check is not null) _atoms.Add(new Atom.Occurs(check));
        var left = beliefs.Network.Records.Where(record => record.Mechanism != Mechanism.Find).ToList();
        while (left.RemoveAll(Take) > 0)
        {
        }
    }

    /// <summary>The purposes under some beliefs.</summary>
    /// <param name="beliefs">What is believed.</param>
    /// <param name="check">A step that finds something out and is to be done, or null.</param>
    public static Purposes Under(BeliefState beliefs, Step? check = null) => new(beliefs, check);

    /// <summary>Whether a record stands on nothing but what has a purpose.</summary>
    public bool Serve(Record record) => record.Premises.All(premise => premise is not Atom.Occurs and not Atom.Wanted and not Atom.Open || _atoms.Contains(premise));

    private bool Take(Record record)
    {
        if (!Serve(record)) return false;
        for (var i = 0; i < record.Effects.Count; i++)
            if (record.Effects[i].Atom is { } atom && _beliefs.Available(record, i) > Assurance.No) _atoms.Add(atom);
        return true;
    }
}
