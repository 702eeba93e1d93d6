using System.CommandLine;
using ProcedureRules.Explaining;
using ProcedureRules.Reports;

namespace ProcedureRules.ConsoleHost;

/// <summary><c>why</c>: why an item stands in the plan.</summary>
internal static class WhyCommand
{
    public static Command Create(HostConsole console)
    {
        var order = PathArgument.Required("JOB.yaml", "work order");
        var item = new Argument<string>("STEP-OR-ITEM") { Description = "a step by number or id, a fact by path, \"7 before 12\", or words of a caution, check, tool or supply" };
        var units = UnitsOption.Create();
        var isShort = new Option<bool>("--short") { Description = "only what says so, from what, and for what" };
        var format = FormatOption.Create();
        var options = new OrderOptions();
        var command = new Command(
            "why",
            """
            Explain why something stands in the plan, down to what was stated.
              Example: procedure-rules why samples/jobs/oil-pan.yaml "remove_fan(fan)"
            """)
        {
            order, item, isShort, format, units,
        };
        options.AddTo(command);
        command.SetAction(parsed =>
        {
            if (options.Open(parsed, parsed.GetValue(order)!, console, out var exit) is not { } session) return exit;
            var result = session.Plan();
            console.Write(result.Diagnostics);
            if (result.Plan is not { } plan) return ExitCode.NoPlan;
            var wanted = parsed.GetValue(item)!;
            var explanations = Why.Of(plan, wanted);
            if (explanations.Count > 0)
            {
                var system = UnitsOption.Read(parsed, units);
                if (FormatOption.IsJson(parsed, format)) console.Output.WriteLine(WhyJson.Write(explanations, system));
                else if (parsed.GetValue(isShort)) console.Write(WhyText.ShortLines(explanations, system, console.Width));
                else console.Write(WhyText.Lines(explanations, system, console.Width));
                return ExitCode.Done;
            }
            console.Error.WriteLine(Why.Nearest(plan, wanted) is { } near
                ? $"nothing in the plan is called '{wanted}'; did you mean '{near}'?"
                : $"nothing in the plan is called '{wanted}'; name a step by number or id, a fact, or words of a caution");
            return ExitCode.Mistakes;
        });
        return command;
    }
}
