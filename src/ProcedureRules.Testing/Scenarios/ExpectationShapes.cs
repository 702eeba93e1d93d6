using ProcedureRules.Shapes;
using static ProcedureRules.Packs.Forms;
using static ProcedureRules.Shapes.Field;

namespace ProcedureRules.Testing.Scenarios;

/// <summary>What an expectation looks like: one keyword, and what may stand beside it. The keywords are those of the conclusions, where there is one.</summary>
internal static class ExpectationShapes
{
    private static readonly Shape StepName = new TextShape { Format = "step", Examples = ["drain_oil", "drain_oil(engine)", "drain_oil#2"] };
    private static readonly Shape Words = new TextShape { Format = "words", Examples = ["Not under the oil pan"] };
    private static readonly Field At = Optional("at", StepName, "The step it stands at.");

    /// <summary>Any expectation.</summary>
    public static readonly RefShape Expectation = new("expectation", () => OneOf!) { Documentation = "What a plan must hold, or must not." };

    private static readonly OneOfShape OneOf = new(
        "an expectation",
        [
            Way("plan", new WordShape("goes_on", "stops"), "Whether the plan leads to the end of the job, or says why it cannot go on."),
            Way("step", StepName, "The step is in the plan: an operation, on any part or on one; with `#2` behind it the second time it is done.", Optional("is", new WordShape("sure", "possible"), "Whether it is sure, or done only if a check says so.")),
            Way("no_step", StepName, "The step is not in the plan."),
            Way("order", new TextShape { Format = "order", Examples = ["drain_oil before remove_pan"] }, "Both steps are in the plan, and all of the first come before all of the second."),
            .. AtSteps("danger", "warning", "caution", "notice"),
            Way("check", Words, "A check with these words.", At, Optional("is", new WordShape("within", "outside", "open"), "What the known facts already say of its limits.")),
            Way("no_check", Words, "No check has these words.", At),
            .. AtSteps("wait", "hold", "detail"),
            .. Lists("tool", "supply", "offer", "assumption"),
            Way("question", Asked, "It is asked for.", At),
            Way("no_question", Asked, "It is not asked for."),
            Way("finding", OfCause, "The readings speak of the cause.", Optional("is", new WordShape("sure", "possible", "ruled_out"), "What they say of it.")),
            Way("no_finding", OfCause, "No reading speaks of the cause."),
            Way("way", Words, "A way with these words is taken."),
            Way("no_way", Words, "No way with these words is taken."),
            Way("value", ByPath(Value), "What is held of a fact lies within this; `unknown` where nothing is known."),
            Way("at_least", ByPath(Value), "What is demanded of a fact at least lies within this."),
            Way("at_most", ByPath(Value), "What all demands on a fact allow at most lies within this."),
            Way("conflict", FactPath, "Statements on the fact contradict each other."),
            Way("labour", Time, "The labour of the plan, from its least to its most, lies within this.", Case),
            Way("elapsed", Time, "The time from the start of the job to its end, nights included, lies within this, in the `shop` of the scenario.", Case),
            Way("stop", Words, "The plan stops with these words.", Optional("is", new WordShape("sure", "possible"), "Whether it is sure that it has to.")),
            Way("no_stop", Words, "The plan does not stop with these words."),
        ]);

    private static Shape Time => new TextShape { Format = "time", Examples = ["3..15 h", "at least 30 min", "at most 2 d"] };

    private static Field Case => Optional("case", new WordShape("low", "likely", "high"), "Only this estimate: the least, halfway for each step, the most.");

    private static TextShape Asked => new() { Format = "what is asked", Examples = ["oil_pan.drop_available", "covers(dust_cover, oil_pan)", "part oil_cooler"] };

    private static TextShape Value => new() { Format = "value", Examples = ["2 in +/- 0.1 in", "yes", "light | heavy", "unknown"] };

    private static IEnumerable<Alternative> AtSteps(params string[] sorts) => sorts.SelectMany(sort => (Alternative[])
    [
        Way(sort, Words, $"A {sort} has these words.", At),
        Way($"no_{sort}", Words, $"No {sort} has these words.", At),
    ]);

    private static IEnumerable<Alternative> Lists(params string[] sorts) => sorts.SelectMany(sort => (Alternative[])
    [
        Way(sort, Words, $"{(sort[0] is 'o' or 'a' ? "An" : "A")} {sort} has these words."),
        Way($"no_{sort}", Words, $"No {sort} has these words."),
    ]);

    private static Alternative Way(string keyword, Shape value, string meaning, params IReadOnlyList<Field> beside) =>
        new(new MapShape($"the expectation '{keyword}'", [Required(keyword, value, meaning), .. beside]) { Documentation = meaning }, keyword);
}
