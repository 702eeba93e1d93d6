namespace ProcedureRules.Packs;

/// <summary>A set of states of one aspect (at most 64 states an aspect).</summary>
public readonly record struct StateSet(ulong Bits)
{
    /// <summary>The set of one state.</summary>
    public static StateSet Of(int state) => new(1UL << state);

    /// <summary>Whether the state is in the set.</summary>
    public bool Has(int state) => (Bits >> state & 1) != 0;

    /// <summary>All states of the aspect that are not in this set.</summary>
    public StateSet Complement(Aspect aspect) => new(~Bits & (aspect.States.Count == 64 ? ulong.MaxValue : (1UL << aspect.States.Count) - 1));

    /// <summary>The states in the set, ascending.</summary>
    public IEnumerable<int> States()
    {
        for (var state = 0; state < 64; state++)
            if (Has(state)) yield return state;
    }
}
