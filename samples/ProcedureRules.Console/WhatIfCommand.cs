using System.CommandLine;
using ProcedureRules.Diagnostics;
using ProcedureRules.Reports;

namespace ProcedureRules.ConsoleHost;

/// <summary><c>what-if</c>: what would change in the plan.</summary>
internal static class WhatIfCommand
{
    public static Command Create(HostConsole console)
    {
        var order = PathArgument.Required("JOB.yaml", "work order");
        var supposed = new Argument<string[]>("fact=value") { Description = "what is supposed: facts, relations or parts, all of them together", Arity = ArgumentArity.OneOrMore };
        var units = UnitsOption.Create();
        var format = FormatOption.Create();
        var options = new OrderOptions();
        var command = new Command(
            "what-if",
            """
            Show what would change in the plan if something were otherwise.
              Example: procedure-rules what-if samples/jobs/oil-pan.yaml "oil_pan.drop_available=4 in"
            """)
        {
            order, supposed, format, units,
        };
        options.AddTo(command);
        command.SetAction(parsed =>
        {
            if (options.Open(parsed, parsed.GetValue(order)!, console, out var exit) is not { } session) return exit;
            var result = session.Suppose(parsed.GetValue(supposed)!);
            console.Write(result.Diagnostics);
            if (result.Diagnostics.Any(mistake => mistake.Severity == Severity.Error)) return ExitCode.Mistakes;
            if (result.After is { } after) console.Write(after.Diagnostics);
            if (result.Difference is not { } difference) return ExitCode.NoPlan;
            var system = UnitsOption.Read(parsed, units);
            if (FormatOption.IsJson(parsed, format)) console.Output.WriteLine(DifferenceJson.Write(difference, system));
            else console.Write(DifferenceText.Lines(difference, system, console.Width));
            return ExitCode.Done;
        });
        return command;
    }
}
