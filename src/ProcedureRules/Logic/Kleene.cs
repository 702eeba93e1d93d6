namespace ProcedureRules.Logic;

/// <summary>The connectives of strong Kleene logic (S. C. Kleene, Introduction to Metamathematics, 1952, section 64).</summary>
/// <remarks>
/// A result is unknown only where replacing the unknown by yes and by no could give different answers. That makes every
/// connective monotone: learning a fact never turns a yes into a no.
/// </remarks>
public static class Kleene
{
    /// <summary>Turns yes into no and no into yes; what is unknown stays unknown.</summary>
    public static Truth Not(Truth a) => (Truth)(Truth.Yes - a);

    /// <summary>The lesser of the two.</summary>
    public static Truth And(Truth a, Truth b) => a < b ? a : b;

    /// <summary>The greater of the two.</summary>
    public static Truth Or(Truth a, Truth b) => a > b ? a : b;

    /// <summary>Not <paramref name="a"/>, or <paramref name="b"/>. Two unknowns give unknown.</summary>
    public static Truth Implies(Truth a, Truth b) => Or(Not(a), b);

    /// <summary>Each implies the other.</summary>
    public static Truth Iff(Truth a, Truth b) => And(Implies(a, b), Implies(b, a));

    /// <summary>Yes if every one is yes (so for none at all), no if one is no, else unknown.</summary>
    public static Truth All(IEnumerable<Truth> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        var least = Truth.Yes;
        foreach (var value in values)
        {
            least = And(least, value);
            if (least == Truth.No) break;
        }

        return least;
    }

    /// <summary>Yes if one is yes, no if every one is no (so for none at all), else unknown.</summary>
    public static Truth Any(IEnumerable<Truth> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        var greatest = Truth.No;
        foreach (var value in values)
        {
            greatest = Or(greatest, value);
            if (greatest == Truth.Yes) break;
        }

        return greatest;
    }

    /// <summary>The truth of something that is known either way.</summary>
    public static Truth Of(bool known) => known ? Truth.Yes : Truth.No;
}
