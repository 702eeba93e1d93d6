using System.CommandLine;

namespace ProcedureRules.ConsoleHost;

/// <summary><c>--format</c>: text for people, JSON for programs.</summary>
internal static class FormatOption
{
    private const string Text = "text";
    private const string Json = "json";

    public static Option<string> Create()
    {
        var format = new Option<string>("--format") { Description = "text for people, JSON for programs", DefaultValueFactory = _ => Text };
        format.AcceptOnlyFromAmong(Text, Json);
        return format;
    }

    public static bool IsJson(ParseResult parsed, Option<string> format) => parsed.GetValue(format) == Json;
}
