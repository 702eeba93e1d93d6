using System.CommandLine;
using ProcedureRules.Explaining;
using ProcedureRules.Reports;

namespace ProcedureRules.ConsoleHost;

/// <summary><c>why-not</c>: why an item does not stand in the plan.</summary>
internal static class WhyNotCommand
{
    public static Command Create(HostConsole console)
    {
        var order = PathArgument.Required("JOB.yaml", "work order");
        var item = new Argument<string>("STEP-OR-ITEM") { Description = "a step by id or operation, or words of a caution, check, tool, supply, stop or cause" };
        var units = UnitsOption.Create();
        var format = FormatOption.Create();
        var options = new OrderOptions();
        var command = new Command(
            "why-not",
            """
            Explain why something is not in the plan, and what would bring it in.
              Example: procedure-rules why-not samples/jobs/oil-pan.yaml "jack_under_pan(engine)"
            """)
        {
            order, item, format, units,
        };
        options.AddTo(command);
        command.SetAction(parsed =>
        {
            if (options.Open(parsed, parsed.GetValue(order)!, console, out var exit) is not { } session) return exit;
            var result = session.Plan();
            console.Write(result.Diagnostics);
            if (result.Plan is not { } plan) return ExitCode.NoPlan;
            var wanted = parsed.GetValue(item)!;
            if (WhyNot.Of(plan, session.Beliefs, wanted) is { } answer)
            {
                var system = UnitsOption.Read(parsed, units);
                if (FormatOption.IsJson(parsed, format)) console.Output.WriteLine(WhyNotJson.Write(answer, system));
                else console.Write(WhyNotText.Lines(answer, system, console.Width));
                return ExitCode.Done;
            }

            console.Error.WriteLine(Why.Of(plan, wanted).Count > 0
                ? $"the plan has '{wanted}'; ask why instead"
                : WhyNot.Nearest(plan, wanted) is { } near ? $"nothing is called '{wanted}'; did you mean '{near}'?" : $"nothing is called '{wanted}'");
            return ExitCode.Mistakes;
        });
        return command;
    }
}
