using ProcedureRules.Shapes;

namespace ProcedureRules.Tests.Shapes;

/// <summary>A small language that uses every kind of shape.</summary>
internal static class SmallShape
{
    private static readonly TextPattern Name = new("[a-z0-9_]+", "lower-case letters, digits and '_'");

    // Looked up late: by then the field below is set.
    private static readonly RefShape Conclusion = new("conclusion", () => Conclusions!) { Documentation = "What a rule concludes." };

    private static readonly OneOfShape Conclusions = new(
        "a conclusion",
        new Alternative(new TextShape { Documentation = "A need in short." }),
        new Alternative(
            new MapShape(
                "a need",
                Field.Required("need", new TextShape { Format = "expression" }, "The state that is needed."),
                Field.Optional("rank", new IntegerShape(1, 9), "Lower is tried first.", "1")),
            "need"),
        new Alternative(
            new MapShape(
                "a choice",
                Field.Required("one_of", new ListShape(Conclusion, 2), "The options | in order.")),
            "one_of"));

    public static MapShape Root { get; } = new(
        "a pack",
        Field.Required("pack", new TextShape { Pattern = Name, Examples = ["bottom_end"] }, "The pack's name."),
        Field.Optional("place", new WordShape("under", "bay", "2") { Documentation = "Where." }, ""),
        Field.Optional("draft", new YesNoShape(), "Whether it is a draft.", "no"),
        Field.Optional("parts", new DictionaryShape(new TextShape()) { KeyPattern = Name }, "Parts by name."),
        Field.Optional("then", new ListShape(Conclusion, 1), "What it concludes."))
    {
        Documentation = "A file of rules.",
    };
}
