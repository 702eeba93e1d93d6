using ProcedureRules.Shapes;
using static ProcedureRules.Packs.Forms;
using static ProcedureRules.Shapes.Field;

namespace ProcedureRules.Packs;

/// <summary>What a conclusion of a rule looks like: one keyword, and what may stand beside it.</summary>
internal static class ConclusionShapes
{
    private static readonly Field At = Optional("at", Name, "The step it is about, where the rule has several.");

    /// <summary>Any conclusion.</summary>
    public static readonly RefShape Conclusion = new("conclusion", () => OneOf!) { Documentation = "What a rule concludes." };

    private static readonly OneOfShape OneOf = new(
        "a conclusion",
        Way("need", Condition, "A state before and during the step.", At),
        Way("end", Condition, "A state at the end of the job."),
        Way("order", Expression, "One step before another, where both occur: `s before t`."),
        Way("forbid", Expression, "A step, an operation on a part or a state that may not occur; beats `need`."),
        Way("do", Work, "Work added to the job.", Optional("before", Name, "The step it comes before."), Optional("after", Name, "The step it comes after.")),
        Way("offer", Work, "Work worth doing while it is open.", Optional("text", Template, "The words a technician reads.")),
        Way("one_of", ListOf(new RefShape("option", () => Option!), 1), "One way of several: the lowest rank first, then the least labour."),
        Way("set", ByPath(Expression), "Derived values of facts."),
        Way("at_least", ByPath(Expression), "Demands on facts: all count."),
        Way("at_most", ByPath(Expression), "Demands on facts: all count."),
        Way("relate", Expression, "A derived relation: `relation(a, b)`."),
        Way("danger", Template, "A hazard that will end in death or serious injury (ANSI Z535.6).", At),
        Way("warning", Template, "A hazard that could end in death or serious injury (ANSI Z535.6).", At),
        Way("caution", Template, "A hazard that could end in minor or moderate injury (ANSI Z535.6).", At),
        Way("notice", Template, "Practices not related to injury (ANSI Z535.6).", At),
        Way("check", Expression, "Limits at the step.", At, Optional("text", Template, "The words a technician reads."), Optional("during", YesNo, "Whether the limits hold all through the step.", "no")),
        Way("tool", Template, "A tool for the step.", At),
        Way("supply", Template, "A supply for the step.", At),
        Way("detail", Template, "A detail line at the step.", At),
        Way("slower", Expression, "How many times its `time` the step takes, such as `1.5..2`; less than 1 counts as 1.", At),
        Way("wait", Wait(), "A wait between two steps, or since an event before the job."),
        Way("for", OfCause, "A finding for a cause.", Strength()),
        Way("against", OfCause, "A finding against a cause.", Strength()),
        Way("exclude", OfCause, "A finding that excludes a cause."),
        Way("stop", Template, "The job cannot go on, and why."));

    private static readonly MapShape Option = new(
        "an option",
        Required("option", Template, "The words a technician reads."),
        Optional("rank", new IntegerShape(0, 1000), "Lower comes first.", "0"),
        Optional("if", Expression, "The condition under which it is open."),
        Optional("then", ListOf(Conclusion), "What it concludes when it is taken."));

    /// <summary>The keywords, in the order of the reference.</summary>
    public static IReadOnlyList<string> Keywords { get; } = [.. OneOf.Keys];

    private static Alternative Way(string keyword, Shape value, string meaning, params IReadOnlyList<Field> beside) => new(
        new MapShape(
            $"the conclusion '{keyword}'",
            [Required(keyword, value, meaning), .. beside, Optional("if_unknown", WhenUnknown, "What the plan does where it is possible but not sure.")])
        {
            Documentation = meaning,
        },
        keyword);

    private static Field Strength() => Optional("strength", new WordShape("strong", "weak"), "How much the finding says.", "weak");

    private static MapShape Wait() => new(
        "a wait",
        Optional("from", Name, "The step after which it starts."),
        Optional("since", FactPath, "A fact: how long ago an event before the job was, from which it counts."),
        Required("until", Name, "The step that has to wait."),
        Optional("least", Expression, "How long at least."),
        Optional("most", Expression, "How long at most."),
        Optional("text", Template, "The words a technician reads."));
}
