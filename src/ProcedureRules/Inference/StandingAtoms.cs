namespace ProcedureRules.Inference;

/// <summary>The atoms that hold in a result, gathered once where several rules are matched with it. Immutable.</summary>
internal sealed class StandingAtoms
{
    private readonly HashSet<Atom> _all;

    /// <summary>Gathers the atoms.</summary>
    public StandingAtoms(InferenceResult result)
    {
        Result = result;
        var joined = new List<Atom>();
        _all = [];
        // Steps are told apart by identity: each comes as the object that the records have.
        foreach (var record in result.Records)
            foreach (var effect in record.Effects)
                if (effect.Atom is { } atom) Add(atom);
        foreach (var atom in SituationInputs.Of(result.Situation)) Add(atom);
        Joined = joined;

        void Add(Atom atom)
        {
            if (_all.Add(atom) && GroundMaker.Joins(atom)) joined.Add(atom);
        }
    }

    /// <summary>The result.</summary>
    public InferenceResult Result { get; }

    /// <summary>Those that conditions of rules can bind to.</summary>
    public IReadOnlyList<Atom> Joined { get; }

    /// <summary>Whether an atom is one of them.</summary>
    public bool Contains(Atom atom) => _all.Contains(atom);
}
