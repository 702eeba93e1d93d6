using System.CommandLine;
using ProcedureRules.Testing;

namespace ProcedureRules.ConsoleHost;

/// <summary><c>test</c>: runs the scenarios beside packs.</summary>
internal static class TestCommand
{
    public static Command Create(HostConsole console)
    {
        var folder = PathArgument.Optional("DIR", "folder of packs, with its scenarios below 'scenarios' (default: the shipped ones)");
        var filter = new Option<string?>("--filter") { Description = "only cases whose name, or whose file, holds these words", HelpName = "TEXT" };
        var format = new Option<string>("--format") { Description = "text for people, JSON for programs, JUnit XML for build servers", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong("text", "json", "junit");
        var watch = new Option<bool>("--watch") { Description = "run again whenever a YAML file below DIR changes, until Ctrl-C" };
        var command = new Command(
            "test",
            """
            Run the scenarios beside packs: each plan is compared with what is expected of it. Ends with 0 where all is as expected, 1 where
            packs or scenarios could not be read, 2 where something is not as expected.
              Example: procedure-rules test rules --filter "oil pan"
            """)
        {
            folder, filter, format, watch,
        };
        command.SetAction((parsed, cancellation) =>
        {
            var rules = parsed.GetValue(folder) ?? HostFiles.Rules;
            int Once() => Run(console, rules, parsed.GetValue(filter), parsed.GetValue(format)!, cancellation);
            return parsed.GetValue(watch) ? Repeat(console, rules, Once, cancellation) : Task.FromResult(Once());
        });
        return command;
    }

    private static async Task<int> Repeat(HostConsole console, string folder, Func<int> run, CancellationToken cancellation)
    {
        if (!Directory.Exists(folder)) return run();
        using var changes = console.Watch(folder);
        var exit = ExitCode.CouldNotRun;
        try
        {
            while (true)
            {
                exit = run();
                await console.Error.WriteLineAsync($"Waiting for a change below {folder}; Ctrl-C ends.");
                await changes.Next(cancellation);
            }
        }
        catch (OperationCanceledException)
        {
            return exit;
        }
    }

    private static int Run(HostConsole console, string folder, string? filter, string format, CancellationToken cancellation)
    {
        if (ScenarioFolder.Open(console, folder, filter) is not var (_, cases)) return ExitCode.CouldNotRun;
        var results = ScenarioRunner.Run(cases, cancellation);
        if (format == "json") console.Output.WriteLine(TestJson.Write(results));
        else if (format == "junit") console.Output.WriteLine(TestJUnit.Write(results));
        else console.Write(TestText.Lines(results, console.Width));
        return results.All(result => result.Passed) ? ExitCode.Done : ExitCode.Mistakes;
    }
}
