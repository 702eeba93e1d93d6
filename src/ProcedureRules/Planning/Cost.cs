using ProcedureRules.Beliefs;
using ProcedureRules.Inference;

namespace ProcedureRules.Planning;

/// <summary>Labour of a whole set of steps, in seconds: what is sure at its least, what may be needed too at its most.</summary>
internal readonly record struct Cost(double Least, double Most, double Drawn) : IComparable<Cost>
{
    /// <summary>The likely labour.</summary>
    public double Likely => (Least + Most) / 2;

    /// <summary>The cost of what is required under some beliefs; shared work counts once, since a step is one atom.</summary>
    public static Cost Under(BeliefState beliefs)
    {
        double least = 0, most = 0, drawn = 0;
        foreach (var atom in beliefs.Network.AtomsOf<Atom.Occurs>())
        {
            var required = beliefs.Required(atom);
            var time = atom.Step.Operation.Time;
            if (required >= Assurance.Protective) least += time.Low;
            if (required >= Assurance.Provisional) most += time.High;
            else if (beliefs.Available(atom) >= Assurance.Provisional) drawn += time.High;
        }
        return new Cost(least, most, drawn);
    }

    /// <inheritdoc/>
    public int CompareTo(Cost other) =>
        Rounded(Likely) != Rounded(other.Likely) ? Likely.CompareTo(other.Likely)
        : Rounded(Most) != Rounded(other.Most) ? Most.CompareTo(other.Most)
        : Rounded(Drawn).CompareTo(Rounded(other.Drawn));

    // Sums depend on the order of their terms in the last digits; a second does not matter.
    private static double Rounded(double seconds) => Math.Round(seconds);
}
