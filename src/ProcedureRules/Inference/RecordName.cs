namespace ProcedureRules.Inference;

/// <summary>A name of a record by its content, so that lists come out the same whatever the order of inference.</summary>
internal static class RecordName
{
    public static string Of(Record record)
    {
        var items = string.Join(' ', Enumerable.Range(0, record.Binding.Count).Select(slot => record.Binding[slot]));
        return record.Rule is { } rule
            ? $"{rule.Name} {items}"
            : $"{record.Mechanism} {string.Join(' ', record.Premises.Select(OfAtom))} {items}";
    }

    public static string OfAtom(Atom atom) => atom switch
    {
        Atom.Exists exists => exists.Part.Name,
        Atom.Related related => $"{related.Relation.Name}({related.A.Name}, {related.B.Name})",
        Atom.Asked asked => $"{asked.Request.Job.Name} {asked.Request.On.Name}",
        Atom.Occurs occurs => occurs.Step.Name,
        Atom.Wanted wanted => new GroundState(wanted.Part, wanted.Aspect, wanted.States).ToString(),
        Atom.Open open => OfChoice(open.Choice),
        Atom.Chosen chosen => $"{OfChoice(chosen.Choice)} {chosen.Option}",
        _ => "",
    };

    /// <summary>A name that tells choices apart and orders them.</summary>
    public static string OfChoice(ChoiceKey key) => key switch
    {
        ChoiceKey.OfRule rule => $"{rule.Rule.Name} {string.Join(' ', Enumerable.Range(0, rule.Binding.Count).Select(slot => rule.Binding[slot]))} {rule.Conclusion}",
        ChoiceKey.OfWays ways => new GroundState(ways.Part, ways.Aspect, ways.States).ToString(),
        _ => "",
    };
}
