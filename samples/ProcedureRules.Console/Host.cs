using System.CommandLine;

namespace ProcedureRules.ConsoleHost;

/// <summary>The commands of the console host.</summary>
internal static class Host
{
    /// <summary>Runs one command line; without arguments, the plan of the demo job.</summary>
    public static int Run(string[] args, HostConsole console)
    {
        var root = new RootCommand(
            """
            Plans repair jobs from rules: what comes off, in which order, what to watch, what to find out first.

            Without arguments it plans the demo job.
              Example: procedure-rules plan samples/jobs/oil-pan.yaml --set "oil_pan.drop_available=4 in"
            """)
        {
            PlanCommand.Create(console),
            ScheduleCommand.Create(console),
            AskCommand.Create(console),
            WhyCommand.Create(console),
            WhyNotCommand.Create(console),
            WhatIfCommand.Create(console),
            FactsCommand.Create(console),
            ReadingsCommand.Create(console),
            CheckCommand.Create(console),
            TestCommand.Create(console),
            CoverageCommand.Create(console),
            LintCommand.Create(console),
            MutateCommand.Create(console),
            CompareCommand.Create(console),
            TableCommand.Create(console),
        };
        var line = args.Length == 0 ? ["plan"] : args;
        var parsed = root.Parse(line);
        var exit = parsed.Invoke(new InvocationConfiguration { Output = console.Output, Error = console.Error });
        return parsed.Errors.Count > 0 ? ExitCode.CouldNotRun : exit;
    }
}
