using System.CommandLine;
using ProcedureRules.Mechanics;
using ProcedureRules.Quantities;
using ProcedureRules.Reports;

namespace ProcedureRules.ConsoleHost;

/// <summary><c>table torque</c>: what a general chart says of a bolt.</summary>
internal static class TableTorqueCommand
{
    private static readonly Quantity Plausible = Quantity.Between(0.05, 1, Dimension.Number);

    public static Command Create(HostConsole console)
    {
        var grade = new Option<string>("--grade") { Description = string.Join(", ", BoltGrades.All.Select(one => one.Mark)), HelpName = "MARK", Required = true };
        var size = new Option<string>("--size") { Description = "the thread, such as 3/8-16 or M8x1.25", HelpName = "THREAD", Required = true };
        var friction = new Option<string>("--friction") { Description = "the nut factor K, such as 0.2, where it is known", HelpName = "K" };
        var format = FormatOption.Create();
        var command = new Command(
            "torque",
            """
            What a general chart says of a bolt: a measure for a stated figure, not the figure of a joint.
              Example: procedure-rules table torque --grade 5 --size 3/8-16
            """)
        {
            grade, size, friction, format,
        };
        command.SetAction(parsed =>
        {
            if (BoltGrades.Find(parsed.GetValue(grade)!.Trim()) is not { } found)
                return TableCommand.Refuse($"no strength of '{parsed.GetValue(grade)}' is known, only of {string.Join(", ", BoltGrades.All.Select(one => one.Mark))}", console);
            if (BoltThread.TryRead(parsed.GetValue(size)!, out var mistake) is not { } thread || TorqueChart.Of(found, thread, out mistake) is not { } chart)
                return TableCommand.Refuse(mistake, console);
            Quantity? factor = null;
            if (parsed.GetValue(friction) is { } text)
            {
                if (!Quantity.TryRead(text, Dimension.Number, out var read, out _) || !Plausible.Contains(read))
                    return TableCommand.Refuse($"--friction '{text}': a nut factor is a number from 0.05 to 1, most often 0.15 to 0.2", console);
                factor = read;
            }

            return TableCommand.Write(TorqueTable.Of(chart, factor), FormatOption.IsJson(parsed, format), console);
        });
        return command;
    }
}
