using System.CommandLine;
using ProcedureRules.Diagnostics;
using ProcedureRules.Explaining;
using ProcedureRules.Language;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;
using ProcedureRules.Reports;

namespace ProcedureRules.ConsoleHost;

/// <summary><c>ask</c>: an interview, question by question, until nothing left can change the plan.</summary>
internal static class AskCommand
{
    public static Command Create(HostConsole console)
    {
        var order = PathArgument.Required("JOB.yaml", "work order");
        var units = UnitsOption.Create();
        var save = new Option<string?>("--save") { Description = "write the vehicle sheet with the answers to a file", HelpName = "SHEET.yaml" };
        var saveOrder = new Option<string?>("--save-order") { Description = "write a work order for that sheet, with the ways fixed", HelpName = "JOB.yaml" };
        var options = new OrderOptions();
        var command = new Command(
            "ask",
            """
            Ask what is unknown and matters, one question at a time, until nothing left can change the plan. Answers are lines of the input.
              Example: procedure-rules ask samples/jobs/oil-pan.yaml --save my-sedan.yaml
            """)
        {
            order, units, save, saveOrder,
        };
        options.AddTo(command);
        command.Validators.Add(result =>
        {
            if (result.GetValue(saveOrder) is not null && result.GetValue(save) is null) result.AddError("--save-order names the sheet that --save writes: give --save, too.");
        });
        command.SetAction(parsed =>
        {
            if (options.Open(parsed, parsed.GetValue(order)!, console, out var exit) is not { } session) return exit;
            var system = UnitsOption.Read(parsed, units);
            if (!Interview(session, system, console)) return ExitCode.NoPlan;
            var exitCode = ExitCode.Done;
            if (parsed.GetValue(save) is { } sheet) exitCode = Save(session.ToSheet(system), sheet, console);
            if (exitCode == ExitCode.Done && parsed.GetValue(saveOrder) is { } job) exitCode = Save(session.ToOrder(PathFrom(job, parsed.GetValue(save)!)), job, console);
            return exitCode;
        });
        return command;
    }

    private static bool Interview(ProcedureSession session, UnitSystem units, HostConsole console)
    {
        var passed = new HashSet<string>(StringComparer.Ordinal);
        for (var number = 1; ; number++)
        {
            var result = session.Plan();
            console.Write(result.Diagnostics);
            if (result.Plan is not { } plan) return false;
            var search = QuestionSearch.Of(plan, session.Beliefs, question => passed.Contains(question.Id));
            if (search.Next is { } next)
            {
                console.Write(QuestionText.Lines(next, number, units, console.Width));
                if (Answer(next.Question, session, passed, console)) continue;
            }

            console.Write(QuestionText.Closing(plan, passed, isSettled: search.Next is null, search.Unproven, units, console.Width));
            return true;
        }
    }

    /// <summary>Reads answers until one can be taken; false where the input has ended.</summary>
    private static bool Answer(PlanQuestion question, ProcedureSession session, HashSet<string> passed, HostConsole console)
    {
        while (console.Input.ReadLine() is { } line)
        {
            var answer = line.Trim();
            if (answer.Length == 0 || answer == "?" || answer.Equals("I don't know", StringComparison.OrdinalIgnoreCase))
            {
                passed.Add(question.Id);
                return true;
            }

            var mistakes = session.State($"{question.Id}={InFull(question.About, answer)}");
            console.Write(mistakes);
            if (mistakes.All(mistake => mistake.Severity != Severity.Error)) return true;
        }

        return false;
    }

    private static string InFull(Reading about, string answer)
    {
        var isYesNo = about is not Reading.OfFact { Key.Fact.Type.IsYesNo: false };
        return isYesNo && answer is "y" or "Y" ? "yes" : isYesNo && answer is "n" or "N" ? "no" : answer;
    }

    private static string PathFrom(string order, string sheet) =>
        Path.GetRelativePath(Path.GetDirectoryName(Path.GetFullPath(order))!, Path.GetFullPath(sheet)).Replace('\\', '/');

    private static int Save(string text, string path, HostConsole console)
    {
        try
        {
            File.WriteAllText(path, text);
            console.Output.WriteLine($"Saved {path}.");
            return ExitCode.Done;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            console.Error.WriteLine($"'{path}' could not be written: {failure.Message}");
            return ExitCode.CouldNotRun;
        }
    }
}
