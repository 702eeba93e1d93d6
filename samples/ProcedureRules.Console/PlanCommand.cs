using System.CommandLine;
using ProcedureRules.Reports;

namespace ProcedureRules.ConsoleHost;

/// <summary><c>plan</c>: the step plan of a work order.</summary>
internal static class PlanCommand
{
    public static Command Create(HostConsole console)
    {
        var order = PathArgument.Optional("JOB.yaml", "work order (default: the demo job)");
        var format = FormatOption.CreateForPlan();
        var units = UnitsOption.Create();
        var answers = new Option<bool>("--answers") { Description = "plan each answer to each open question, too, and say what it would change (takes longer)" };
        var options = new OrderOptions();
        var command = new Command(
            "plan",
            """
            Plan a work order.
              Example: procedure-rules plan samples/jobs/oil-pan.yaml --set "oil_pan.drop_available=4 in" --units si
            """)
        {
            order, format, units, answers,
        };
        options.AddTo(command);
        command.SetAction(parsed =>
        {
            if (options.Open(parsed, parsed.GetValue(order) ?? HostFiles.DemoOrder, console, out var exit) is not { } session) return exit;
            var result = session.Plan();
            console.Write(result.Diagnostics);
            if (result.Plan is not { } plan) return ExitCode.NoPlan;
            var system = UnitsOption.Read(parsed, units);
            var sharing = session.Sharing(plan);
            var outlook = session.Outlook(plan, parsed.GetValue(answers));
            switch (parsed.GetValue(format))
            {
                case FormatOption.Json:
                    console.Output.WriteLine(PlanJson.Write(plan, system, sharing, outlook));
                    break;
                case FormatOption.Markdown:
                    console.Output.Write(PlanMarkdown.Write(plan, system, sharing, outlook));
                    break;
                case FormatOption.Html:
                    console.Output.Write(PlanHtml.Write(plan, system, sharing, outlook));
                    break;
                default:
                    console.Write(PlanText.Lines(plan, system, console.Width, sharing, outlook));
                    break;
            }

            return plan.IsStopped ? ExitCode.NoPlan : ExitCode.Done;
        });
        return command;
    }
}
