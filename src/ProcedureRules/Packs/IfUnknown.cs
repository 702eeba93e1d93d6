namespace ProcedureRules.Packs;

/// <summary>What a plan does with a conclusion that is possible but not sure.</summary>
public enum IfUnknown
{
    /// <summary>As usual for the kind of conclusion.</summary>
    Default,

    /// <summary>It stands as if it were sure (what protects).</summary>
    Do,

    /// <summary>It stands behind the check that settles it (access work).</summary>
    BehindCheck,

    /// <summary>The plan holds until it is known (remedies, figures, directions, findings).</summary>
    Hold,
}
