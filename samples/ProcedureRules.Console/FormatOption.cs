using System.CommandLine;

namespace ProcedureRules.ConsoleHost;

/// <summary><c>--format</c>: text for people, JSON for programs, and of a plan a work sheet for the bay.</summary>
internal static class FormatOption
{
    public const string Json = "json";
    public const string Markdown = "markdown";
    public const string Html = "html";
    private const string Text = "text";

    public static Option<string> Create() => Create("text for people, JSON for programs", Text, Json);

    public static Option<string> CreateForPlan() =>
        Create("text for people, JSON for programs, Markdown or HTML for a work sheet on paper or a phone", Text, Json, Markdown, Html);

    public static bool IsJson(ParseResult parsed, Option<string> format) => parsed.GetValue(format) == Json;

    private static Option<string> Create(string description, params string[] formats)
    {
        var format = new Option<string>("--format") { Description = description, DefaultValueFactory = _ => Text };
        format.AcceptOnlyFromAmong(formats);
        return format;
    }
}
