using ProcedureRules.Packs;

namespace ProcedureRules.Ordering;

/// <summary>A variable of the world in one of some states.</summary>
internal readonly record struct Guard(int Variable, StateSet States)
{
    public bool Holds(int[] state) => States.Has(state[Variable]);

    /// <summary>Whether all of them hold.</summary>
    public static bool All(IReadOnlyList<Guard> guards, int[] state)
    {
        for (var i = 0; i < guards.Count; i++)
            if (!guards[i].Holds(state)) return false;
        return true;
    }
}
