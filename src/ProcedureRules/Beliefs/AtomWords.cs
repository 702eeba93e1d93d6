using ProcedureRules.Inference;

namespace ProcedureRules.Beliefs;

/// <summary>The names of atoms in messages.</summary>
internal static class AtomWords
{
    /// <summary>An atom as a pack or sheet would write it.</summary>
    public static string Of(Atom atom) => atom switch
    {
        Atom.Exists exists => exists.Part.Name,
        Atom.Related related => $"{related.Relation.Name}({related.A.Name}, {related.B.Name})",
        Atom.Asked asked => $"{asked.Request.Job.Name} on {asked.Request.On.Name}",
        Atom.Occurs occurs => occurs.Step.Name,
        Atom.Wanted wanted => new GroundState(wanted.Part, wanted.Aspect, wanted.States).ToString(),
        Atom.Open open => $"choice of {Of(open.Choice)}",
        Atom.Chosen chosen => $"option {chosen.Option + 1} of {Of(chosen.Choice)}",
        _ => "",
    };

    private static string Of(ChoiceKey choice) => choice switch
    {
        ChoiceKey.OfRule rule => $"'{rule.Rule.Title}'",
        ChoiceKey.OfWays ways => $"ways to {new GroundState(ways.Part, ways.Aspect, ways.States)}",
        _ => "",
    };
}
