using System.Diagnostics;
using ProcedureRules.Diagnostics;

namespace ProcedureRules.Shapes;

/// <summary>Says in the writer's words what a shape expects.</summary>
internal static class ShapeWords
{
    /// <summary>What is expected, with its article.</summary>
    public static string Expected(Shape shape) => RefShape.Resolve(shape) switch
    {
        TextShape { Format: { } format } => WithArticle(format),
        TextShape => "a text",
        WordShape { Words: var words } => Messages.Either(words),
        YesNoShape => "yes or no",
        IntegerShape => "a whole number",
        ListShape => "a list",
        MapShape map => $"{map.Noun} (a mapping)",
        DictionaryShape => "a mapping of names",
        OneOfShape oneOf => oneOf.Noun,
        _ => throw new UnreachableException(),
    };

    private static string WithArticle(string noun) => ("aeiou".Contains(noun[0]) ? "an " : "a ") + noun;
}
