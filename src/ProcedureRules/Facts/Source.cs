namespace ProcedureRules.Facts;

/// <summary>Where a statement comes from; a higher source outranks a lower one.</summary>
public enum Source : byte
{
    /// <summary>Nothing is known.</summary>
    None,

    /// <summary>An archetype's assumption.</summary>
    Assumed,

    /// <summary>Somebody's estimate.</summary>
    Estimated,

    /// <summary>Stated by the maker or on the sheet.</summary>
    Stated,

    /// <summary>Measured or seen on this vehicle.</summary>
    Measured,
}
