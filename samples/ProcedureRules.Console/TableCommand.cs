using System.CommandLine;
using ProcedureRules.Reports;

namespace ProcedureRules.ConsoleHost;

/// <summary><c>table</c>: what the functions of the packs know, as tables. A subcommand for each table.</summary>
internal static class TableCommand
{
    public static Command Create(HostConsole console) => new(
        "table",
        """
        Print a table of what the functions know, with what it rests on.
          Example: procedure-rules table saturation R-134a --from 0 --to 120
        """)
    {
        TableSaturationCommand.Create(console),
        TableTorqueCommand.Create(console),
    };

    public static int Write(FigureTable table, bool asJson, HostConsole console)
    {
        if (asJson) console.Output.WriteLine(FigureTableJson.Write(table));
        else console.Write(FigureTableText.Lines(table, console.Width));
        return ExitCode.Done;
    }

    /// <summary>Says what is wrong with what was asked for.</summary>
    public static int Refuse(string mistake, HostConsole console)
    {
        console.Error.WriteLine(mistake);
        return ExitCode.Mistakes;
    }
}
