using ProcedureRules.ConsoleHost;

namespace ProcedureRules.Tests.ConsoleHost;

/// <summary>Runs a command line of the console host.</summary>
internal static class RunHost
{
    public static (int Exit, string Output, string Error) With(params string[] args)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var exit = Host.Run(args, new HostConsole(output, error, null, 80));
        return (exit, output.ToString().ReplaceLineEndings("\n"), error.ToString().ReplaceLineEndings("\n"));
    }
}
