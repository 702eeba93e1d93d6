using System.CommandLine;
using ProcedureRules.Reports;

namespace ProcedureRules.ConsoleHost;

/// <summary><c>facts</c>: what is known, from where, what is open.</summary>
internal static class FactsCommand
{
    public static Command Create(HostConsole console)
    {
        var order = PathArgument.Required("JOB.yaml", "work order");
        var units = UnitsOption.Create();
        var options = new OrderOptions();
        var command = new Command(
            "facts",
            """
            Show what is known of the vehicle, from where, and what is open.
              Example: procedure-rules facts samples/jobs/oil-pan.yaml
            """)
        {
            order, units,
        };
        options.AddTo(command);
        command.SetAction(parsed =>
        {
            if (options.Open(parsed, parsed.GetValue(order)!, console, out var exit) is not { } session) return exit;
            var plan = session.Plan().Plan;
            console.Write(FactsText.Lines(session.Situation, session.Beliefs, plan, UnitsOption.Read(parsed, units), console.Width));
            return ExitCode.Done;
        });
        return command;
    }
}
