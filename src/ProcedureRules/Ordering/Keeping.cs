using ProcedureRules.Language;

namespace ProcedureRules.Ordering;

/// <summary>While a variable is in a state, another one must be in one of some states.</summary>
internal sealed record Keeping(Guard During, Guard Kept, WhileCondition Source)
{
    public bool Fails(int[] state) => During.Holds(state) && !Kept.Holds(state);
}
