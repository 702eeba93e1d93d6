namespace ProcedureRules.Language;

/// <summary>The kinds of structural predicate that rules are matched against.</summary>
public enum PredicateSort
{
    /// <summary>part(x): x is a part of the kind <see cref="Predicate.Name"/>.</summary>
    Part,

    /// <summary>related(a, b) by the relation <see cref="Predicate.Name"/>.</summary>
    Related,

    /// <summary>step(s): any step.</summary>
    Step,

    /// <summary>s does the operation <see cref="Predicate.Name"/>.</summary>
    Does,

    /// <summary>s works on x.</summary>
    On,

    /// <summary>s leaves state <see cref="Predicate.Detail"/> of the aspect <see cref="Predicate.Name"/> of x.</summary>
    Leaves,

    /// <summary>s reaches state <see cref="Predicate.Detail"/> of the aspect <see cref="Predicate.Name"/> of x.</summary>
    Reaches,

    /// <summary>s touches x (works on it, or its operation names its kind).</summary>
    Touches,

    /// <summary>s moves x.</summary>
    Moves,

    /// <summary>s is done at the place <see cref="Predicate.Name"/>.</summary>
    Place,

    /// <summary>s meets the energy <see cref="Predicate.Name"/>.</summary>
    Energy,

    /// <summary>s is in the phase <see cref="Predicate.Name"/>.</summary>
    Phase,

    /// <summary>the job <see cref="Predicate.Name"/> is asked for, on x.</summary>
    Job,
}
