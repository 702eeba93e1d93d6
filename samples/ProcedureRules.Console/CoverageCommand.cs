using System.CommandLine;
using ProcedureRules.Testing;

namespace ProcedureRules.ConsoleHost;

/// <summary><c>coverage</c>: what the scenarios beside packs reach of their rules.</summary>
internal static class CoverageCommand
{
    public static Command Create(HostConsole console)
    {
        var folder = PathArgument.Optional("DIR", "folder of packs, with its scenarios below 'scenarios' (default: the shipped ones)");
        var threshold = new Option<int>("--threshold") { Description = "least share of conditions seen both to hold and not to, per cent", HelpName = "N", DefaultValueFactory = _ => 0 };
        var format = new Option<string>("--format") { Description = "text for people, JSON for programs, HTML for the packs' text lit by what is reached", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong("text", "json", "html");
        var command = new Command(
            "coverage",
            """
            Run the scenarios beside packs and show which rules never fire in them, which conditions are never seen to hold, or not to, and which
            conclusions, operations, facts and jobs none of them needs. Ends with 0, with 1 where packs or scenarios could not be read, with 2 below
            the threshold.
              Example: procedure-rules coverage rules --threshold 90
            """)
        {
            folder, threshold, format,
        };
        command.SetAction((parsed, cancellation) =>
            Task.FromResult(Run(console, parsed.GetValue(folder) ?? HostFiles.Rules, parsed.GetValue(threshold), parsed.GetValue(format)!, cancellation)));
        return command;
    }

    private static int Run(HostConsole console, string folder, int threshold, string format, CancellationToken cancellation)
    {
        if (ScenarioFolder.Open(console, folder, null) is not var (engine, cases)) return ExitCode.CouldNotRun;
        var report = CoverageReport.Of(engine, cases, cancellation);
        if (format == "json") console.Output.WriteLine(CoverageJson.Write(report));
        else if (format == "html") console.Output.Write(CoverageHtml.Write(report));
        else console.Write(CoverageText.Lines(report, console.Width));
        return report.Settled * 100 >= threshold * report.Conditions ? ExitCode.Done : ExitCode.Mistakes;
    }
}
