namespace ProcedureRules.Testing;

/// <summary>A number of a pack's version, by what has to change for it to be stepped.</summary>
public enum VersionPart
{
    /// <summary>The third: only words for people have changed.</summary>
    Patch,

    /// <summary>The second: there are new names, or plans may come out otherwise.</summary>
    Minor,

    /// <summary>The first: a name that sheets, orders or other packs can use is gone, or means something else.</summary>
    Major,
}
