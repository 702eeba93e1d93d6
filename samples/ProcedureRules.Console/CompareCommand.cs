using System.CommandLine;
using ProcedureRules.Testing;

namespace ProcedureRules.ConsoleHost;

/// <summary><c>compare</c>: which plans two versions of packs make otherwise, and why.</summary>
internal static class CompareCommand
{
    public static Command Create(HostConsole console)
    {
        var old = PathArgument.Required("OLD-DIR", "folder of the packs before");
        var now = PathArgument.Required("NEW-DIR", "folder of the packs after");
        var generated = new Option<int>("--generated") { Description = "vehicles to generate for each job, beside the scenarios of both folders", HelpName = "N" };
        var seed = new Option<int>("--seed") { Description = "what the generated vehicles hang on", HelpName = "N", DefaultValueFactory = _ => 1 };
        var format = new Option<string>("--format") { Description = "text for people, JSON for programs, Markdown for a review", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong("text", "json", "markdown");
        generated.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int>() < 0) result.AddError("--generated takes 0 or more");
        });
        var units = UnitsOption.Create();
        var command = new Command(
            "compare",
            """
            Plan the scenarios of two versions of packs with both and show which plans change, each change under what was changed in the packs, and
            whether the versions of the packs were stepped enough. Ends with 0 where they were, 1 where packs or scenarios could not be read, 2
            where one was not.
              Example: procedure-rules compare ../released/rules rules --generated 5
            """)
        {
            old, now, generated, seed, format, units,
        };
        command.SetAction((parsed, cancellation) =>
        {
            var options = new ComparisonOptions { Generated = parsed.GetValue(generated), Seed = parsed.GetValue(seed), Units = UnitsOption.Read(parsed, units) };
            return Task.FromResult(Run(console, parsed.GetValue(old)!, parsed.GetValue(now)!, options, parsed.GetValue(format)!, cancellation));
        });
        return command;
    }

    private static int Run(HostConsole console, string old, string now, ComparisonOptions options, string format, CancellationToken cancellation)
    {
        if (Load(console, old) is not { } before || Load(console, now) is not { } after) return ExitCode.CouldNotRun;
        var comparison = PackComparison.Of(before, old, after, now, options, cancellation);
        if (format == "json") console.Output.WriteLine(ComparisonJson.Write(comparison));
        else if (format == "markdown") console.Output.Write(ComparisonMarkdown.Write(comparison, options.Units));
        else console.Write(ComparisonText.Lines(comparison, options.Units, console.Width));
        return comparison.IsStepEnough ? ExitCode.Done : ExitCode.Mistakes;
    }

    // Scenarios may be missing, not mistaken: what cannot be read with its own packs proves nothing.
    private static ProcedureEngine? Load(HostConsole console, string folder)
    {
        var loaded = ProcedureEngine.Load(folder);
        console.Write(loaded.Diagnostics);
        if (loaded.Engine is not { } engine) return null;
        var scenarios = ScenarioSet.Beside(engine, folder);
        console.Write(scenarios.Diagnostics);
        return scenarios.HasErrors ? null : engine;
    }
}
