using ProcedureRules.ConsoleHost;

namespace ProcedureRules.Tests.ConsoleHost;

/// <summary>Runs a command line of the console host.</summary>
internal static class RunHost
{
    public static (int Exit, string Output, string Error) With(params string[] args) => Asking("", args);

    /// <summary>With lines of input to read.</summary>
    public static (int Exit, string Output, string Error) Asking(string input, params string[] args) => Run(input, null, args);

    /// <summary>With changes of files as a test makes them.</summary>
    public static (int Exit, string Output, string Error) Watching(IFolderChanges changes, params string[] args) => Run("", changes, args);

    private static (int Exit, string Output, string Error) Run(string input, IFolderChanges? changes, string[] args)
    {
        using var answers = new StringReader(input);
        using var output = new StringWriter();
        using var error = new StringWriter();
        var exit = Host.Run(args, new HostConsole(output, error, null, 80) { Input = answers, Watch = folder => changes ?? new YamlChanges(folder) });
        return (exit, output.ToString().ReplaceLineEndings("\n"), error.ToString().ReplaceLineEndings("\n"));
    }
}
