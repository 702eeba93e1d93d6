namespace ProcedureRules.Explaining;

/// <summary>What the search for a change of facts that brings an item in came to.</summary>
public enum ChangeSearch
{
    /// <summary>A change was found, and planned.</summary>
    Found,

    /// <summary>No one fact does, and no two, of those that the item rests on.</summary>
    NoneOfTwo,

    /// <summary>Nothing was found before the search had cost enough.</summary>
    Unfinished,

    /// <summary>No change of facts does, whatever they are: it would take other parts, relations or jobs, or a way that is fixed though another is always better.</summary>
    Impossible,
}
