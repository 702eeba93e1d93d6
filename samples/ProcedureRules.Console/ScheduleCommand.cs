using System.CommandLine;
using ProcedureRules.Reports;
using ProcedureRules.Scheduling;

namespace ProcedureRules.ConsoleHost;

/// <summary><c>schedule</c>: the plan of a work order in time.</summary>
internal static class ScheduleCommand
{
    public static Command Create(HostConsole console)
    {
        var order = PathArgument.Optional("JOB.yaml", "work order (default: the demo job)");
        var shop = new Option<string?>("--shop") { Description = "technicians, hours, places (default: one technician, Monday to Friday 8:00-17:00)", HelpName = "SHOP.yaml" };
        var technicians = new Option<int?>("--technicians") { Description = "how many technicians, instead of the shop's own", HelpName = "N" };
        var start = new Option<string?>("--start") { Description = "when the job may begin (default: now)", HelpName = "2026-11-25T08:00" };
        var format = FormatOption.Create();
        technicians.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int?>() is { } count && count is < 1 or > Workshop.MostTechnicians)
                result.AddError($"--technicians takes 1 to {Workshop.MostTechnicians}");
        });
        start.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<string?>() is { } text && JobStart.Read(text) is null)
                result.AddError($"--start '{text}' is not a date and time such as 2026-11-25T08:00");
        });
        var units = UnitsOption.Create();
        var options = new OrderOptions();
        var command = new Command(
            "schedule",
            """
            Put the plan of a work order in time: who does what when, what to order by when, when it is done.
              Example: procedure-rules schedule samples/jobs/oil-pan.yaml --technicians 2 --start 2026-11-25T08:00
            """)
        {
            order, shop, technicians, start, format, units,
        };
        options.AddTo(command);
        command.SetAction(parsed =>
        {
            if (options.Open(parsed, parsed.GetValue(order) ?? HostFiles.DemoOrder, console, out var exit) is not { } session) return exit;
            var workshop = Workshop.Usual;
            if (parsed.GetValue(shop) is { } path)
            {
                var read = ShopFile.Read(path, session.Situation.Vocabulary);
                console.Write(read.Diagnostics);
                if (read.Shop is not { } own) return ExitCode.Mistakes;
                workshop = own;
            }
            if (parsed.GetValue(technicians) is { } count) workshop = workshop with { Technicians = count };
            var result = session.Plan();
            console.Write(result.Diagnostics);
            if (result.Plan is not { } plan) return ExitCode.NoPlan;
            var begin = parsed.GetValue(start) is { } text ? JobStart.Read(text)!.Value : DateTime.Now;
            var schedule = Scheduler.Schedule(plan, workshop, begin);
            var system = UnitsOption.Read(parsed, units);
            if (FormatOption.IsJson(parsed, format)) console.Output.WriteLine(ScheduleJson.Write(schedule, system));
            else console.Write(ScheduleText.Lines(schedule, system, console.Width));
            return plan.IsStopped ? ExitCode.NoPlan : ExitCode.Done;
        });
        return command;
    }
}
