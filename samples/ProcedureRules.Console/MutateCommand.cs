using System.CommandLine;
using ProcedureRules.Testing;

namespace ProcedureRules.ConsoleHost;

/// <summary><c>mutate</c>: changes one thing in a rule after the other and looks whether a scenario notices.</summary>
internal static class MutateCommand
{
    public static Command Create(HostConsole console)
    {
        var folder = PathArgument.Optional("DIR", "folder of packs, with its scenarios below 'scenarios' (default: the shipped ones)");
        var seed = new Option<int>("--seed") { Description = "what the order of the changes hangs on", HelpName = "N", DefaultValueFactory = _ => 1 };
        var threshold = new Option<int>("--threshold") { Description = "least share of changes that a scenario has to notice, per cent", HelpName = "N", DefaultValueFactory = _ => 0 };
        var limit = new Option<int?>("--limit") { Description = "only so many changes, picked by the seed", HelpName = "N" };
        var filter = new Option<string?>("--filter") { Description = "only rules with these words in their name, or in their pack's", HelpName = "RULE" };
        var results = new Option<string?>("--results") { Description = "file that keeps what was found: a later run goes on from there while packs and scenarios are the same", HelpName = "FILE" };
        var format = new Option<string>("--format") { Description = "text for people, JSON for programs", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong("text", "json");
        var command = new Command(
            "mutate",
            """
            Change one thing in a rule after the other and run the scenarios that can notice: a condition or conclusion is dropped, a figure moved,
            a signal word weakened. What no scenario notices is shown, with the scenario that is missing. Ends with 0, with 1 where packs or
            scenarios could not be read or fail as they are, with 2 below the threshold.
              Example: procedure-rules mutate rules --filter vacuum --threshold 60
            """)
        {
            folder, seed, threshold, limit, filter, results, format,
        };
        command.SetAction((parsed, cancellation) =>
        {
            var options = new MutationOptions { Seed = parsed.GetValue(seed), Limit = parsed.GetValue(limit), Filter = parsed.GetValue(filter), ResultFile = parsed.GetValue(results) };
            return Task.FromResult(Run(console, parsed.GetValue(folder) ?? HostFiles.Rules, options, parsed.GetValue(threshold), parsed.GetValue(format)!, cancellation));
        });
        return command;
    }

    private static int Run(HostConsole console, string folder, MutationOptions options, int threshold, string format, CancellationToken cancellation)
    {
        if (ScenarioFolder.Open(console, folder, null) is not var (engine, cases)) return ExitCode.CouldNotRun;
        MutationReport report;
        try
        {
            report = console.WithProgress("changes", progress => MutationReport.Of(engine, cases, options with { Progress = progress }, cancellation));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            console.Error.WriteLine($"{options.ResultFile}: {failure.Message}");
            return ExitCode.CouldNotRun;
        }

        if (report.Failing.Count > 0)
        {
            console.Write(TestText.Lines(report.Failing, console.Width));
            return ExitCode.CouldNotRun;
        }

        if (format == "json") console.Output.WriteLine(MutationJson.Write(report));
        else console.Write(MutationText.Lines(report, console.Width));
        return report.Score >= threshold ? ExitCode.Done : ExitCode.Mistakes;
    }
}
