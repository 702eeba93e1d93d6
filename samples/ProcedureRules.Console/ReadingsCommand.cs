using System.CommandLine;
using ProcedureRules.Reports;

namespace ProcedureRules.ConsoleHost;

/// <summary><c>readings</c>: what readings come to, what they can mean, and what would tell.</summary>
internal static class ReadingsCommand
{
    public static Command Create(HostConsole console)
    {
        var order = PathArgument.Required("JOB.yaml", "work order");
        var units = UnitsOption.Create();
        var options = new OrderOptions();
        var command = new Command(
            "readings",
            """
            Show what the readings of a work order come to: figures worked out, with their basis, what they can mean and cannot, and what would tell.
              Example: procedure-rules readings samples/jobs/oil-pan.yaml --set "oil_pan.drop_available=4 in"
            """)
        {
            order, units,
        };
        options.AddTo(command);
        command.SetAction(parsed =>
        {
            if (options.Open(parsed, parsed.GetValue(order)!, console, out var exit) is not { } session) return exit;
            var result = session.Plan();
            console.Write(result.Diagnostics);
            if (result.Plan is not { } plan) return ExitCode.NoPlan;
            console.Write(ReadingsText.Lines(session.Beliefs, plan, UnitsOption.Read(parsed, units), console.Width));
            return ExitCode.Done;
        });
        return command;
    }
}
