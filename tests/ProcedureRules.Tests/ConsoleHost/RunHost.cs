using ProcedureRules.ConsoleHost;

namespace ProcedureRules.Tests.ConsoleHost;

/// <summary>Runs a command line of the console host.</summary>
internal static class RunHost
{
    public static (int Exit, string Output, string Error) With(params string[] args) => Asking("", args);

    /// <summary>With lines of input to read.</summary>
    public static (int Exit, string Output, string Error) Asking(string input, params string[] args)
    {
        using var answers = new StringReader(input);
        using var output = new StringWriter();
        using var error = new StringWriter();
        var exit = Host.Run(args, new HostConsole(output, error, null, 80) { Input = answers });
        return (exit, output.ToString().ReplaceLineEndings("\n"), error.ToString().ReplaceLineEndings("\n"));
    }
}
