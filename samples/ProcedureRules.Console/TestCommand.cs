using System.CommandLine;
using ProcedureRules.Diagnostics;
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
        var approve = new Option<string[]>("--approve")
        {
            Description = "print approved plans anew, beside the scenarios: of the cases that are held to one (held), of all (all), or of a case or a scenario by its whole name; may be repeated, and --filter narrows it; read what changes before you keep it",
            HelpName = "held|all|NAME",
            AllowMultipleArgumentsPerToken = false,
        };
        var command = new Command(
            "test",
            """
            Run the scenarios beside packs: each plan is compared with what is expected of it. Ends with 0 where all is as expected, 1 where
            packs or scenarios could not be read, 2 where something is not as expected.
              Example: procedure-rules test rules --filter "oil pan"
              Example: procedure-rules test rules --approve "A bent pan: narrow gap" --approve "A bent pan: wide gap"
            """)
        {
            folder, filter, format, watch, approve,
        };
        command.SetAction((parsed, cancellation) =>
        {
            var rules = parsed.GetValue(folder) ?? HostFiles.Rules;
            if (parsed.GetValue(approve) is { Length: > 0 } names) return Task.FromResult(Approve(console, rules, ApprovalScope.Of(names, parsed.GetValue(filter)), cancellation));
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

    private static int Approve(HostConsole console, string folder, ApprovalScope scope, CancellationToken cancellation)
    {
        if (ScenarioFolder.Load(console, folder) is not { } engine) return ExitCode.CouldNotRun;
        var approval = Approval.Of(engine, folder, scope, cancellation);
        console.Write(approval.Diagnostics);
        if (approval.Diagnostics.Any(mistake => mistake.Severity == Severity.Error)) return ExitCode.CouldNotRun;
        if (approval.Failing.Count > 0)
        {
            console.Write(TestText.Lines(approval.Failing, console.Width));
            return ExitCode.Mistakes;
        }

        foreach (var file in approval.Files)
        {
            try
            {
                file.Write();
                console.Output.WriteLine($"{(file.Text is null ? "gone    " : "printed ")}{file.Path}");
            }
            catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
            {
                console.Error.WriteLine($"{file.Path}: {failure.Message}");
                return ExitCode.CouldNotRun;
            }
        }

        console.Output.WriteLine(approval.Files.Count == 0 ? "Every approved plan is as it was." : "Read what has changed before you keep it.");
        return ExitCode.Done;
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
