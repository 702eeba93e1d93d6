namespace ProcedureRules.Diagnostics;

/// <summary>PR07xx: planning.</summary>
internal static partial class Messages
{
    private static readonly DiagnosticCode OrderRingCode = Declare(
        "PR0701",
        "Order conclusions that form a ring",
        "Take one of the named rules' 'order' away, or give it a condition that excludes the others.",
        "for: {s: step, t: step}\nwhen: [ s does raise_vehicle, t does drain_oil ]\nthen: [{order: s before t}, {order: t before s}]");

    private static readonly DiagnosticCode NoOrderCode = Declare(
        "PR0702",
        "Steps that cannot be put in any order",
        "Read the notes: two needs exclude each other, or a step is needed that nothing offers.",
        "for: {s: step}\nwhen: [ s does drain_oil ]\nthen: [{need: vehicle.height is raised}, {need: vehicle.height is ground}]");

    private static readonly DiagnosticCode OrderSearchBoundCode = Declare(
        "PR0703",
        "No order found within the bound",
        "Read the notes for the steps that are stuck; an 'order' or a 'need' that says which comes first helps.",
        "# hundreds of steps whose needs take turns");

    private static readonly DiagnosticCode PlanRejectedCode = Declare(
        "PR0704",
        "A plan that its own check rejected",
        "Report it with the packs and the work order: this is a mistake of the library. The plan is not shown, since it may be unsafe.",
        "# nothing in a pack should bring it about");

    private static readonly DiagnosticCode NoDecisionCode = Declare(
        "PR0705",
        "No set of choices found within the bound",
        "Take a choice by hand, or rank the options.",
        "# a great many one_of of equal rank, most of them forbidden");

    private static readonly DiagnosticCode UnknownChoiceCode = Declare(
        "PR0706",
        "A choice or a way that is not there",
        "Write CHOICE=WAY with the ids that the plan prints beside the ways.",
        "--choose engine.hodl=jack_boss");

    private static readonly DiagnosticCode ChoiceNotThereCode = Declare(
        "PR0707",
        "A way fixed for a choice that does not come up",
        "Nothing, where the choice is settled by now; take the line away when it will not come up again.",
        "choose: {oil_pan.place: lower_oil_pan}");

    public static Diagnostic ChoiceNotThere(SourceSpan span, string name) =>
        ChoiceNotThereCode.At(span, $"{Quote(name)} does not come up as things stand: the way fixed for it is not used", Severity.Warning);

    public static Diagnostic ChoiceForm(SourceSpan span, string text) =>
        UnknownChoiceCode.At(span, $"{Quote(text)} does not say which way is taken; write CHOICE=WAY, as the plan prints them");

    public static Diagnostic UnknownChoice(SourceSpan span, string name, IEnumerable<string> known) =>
        Misspelt(UnknownChoiceCode, span, $"nothing is chosen here by the name of {Quote(name)}", name, known);

    public static Diagnostic UnknownWay(SourceSpan span, string choice, string name, IEnumerable<string> known)
    {
        var ways = known.ToList();
        var diagnostic = Misspelt(UnknownChoiceCode, span, $"{Quote(choice)} has no way {Quote(name)}", name, ways);
        return diagnostic.Suggestion is null ? diagnostic.Note($"the ways are {Either(ways)}") : diagnostic;
    }

    public static Diagnostic OrderRing(SourceSpan span, IEnumerable<string> steps) =>
        OrderRingCode.At(span, $"each of these steps is to come before the next, and the last before the first: {Either(steps).Replace(" or ", " and ", StringComparison.Ordinal)}");

    public static Diagnostic NoOrder(IEnumerable<string> left) =>
        NoOrderCode.At(SourceSpan.None, $"no order of the steps meets all needs; left over: {List(left)}");

    public static Diagnostic OrderSearchBound(IEnumerable<string> left) =>
        OrderSearchBoundCode.At(SourceSpan.None, $"no order of the steps was found within the bound; left over: {List(left)}");

    public static Diagnostic PlanRejected(IEnumerable<string> violations)
    {
        var diagnostic = PlanRejectedCode.At(SourceSpan.None, "the plan that was found does not pass its own check and is not shown");
        foreach (var violation in violations.Take(20)) diagnostic = diagnostic.Note(violation);
        return diagnostic;
    }

    public static Diagnostic NoDecision() => NoDecisionCode.At(SourceSpan.None, "no set of choices was found within the bound");

    private static string List(IEnumerable<string> names, int most = 12)
    {
        var all = names.Select(Quote).ToList();
        return all.Count == 0 ? "nothing" : all.Count <= most ? string.Join(", ", all) : $"{string.Join(", ", all.Take(most))} and {Count(all.Count - most, "other")}";
    }
}
