namespace ProcedureRules.Beliefs;

/// <summary>
/// How firmly something stands. A chain: a record stands as firm as its weakest premise, an atom as its strongest record. Everything
/// between <see cref="No"/> and <see cref="Sure"/> is possible but not sure; the steps between say what the plan does with it.
/// </summary>
public enum Assurance : byte
{
    /// <summary>It does not hold in any case that the known facts leave open.</summary>
    No,

    /// <summary>Possible; the plan holds until it is known.</summary>
    Held,

    /// <summary>Possible; it stands behind the check that settles it.</summary>
    Provisional,

    /// <summary>Possible; it stands as if it were sure, since it protects.</summary>
    Protective,

    /// <summary>It holds in every case that the known facts leave open.</summary>
    Sure,
}
