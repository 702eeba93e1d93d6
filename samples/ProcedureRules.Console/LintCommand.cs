using System.CommandLine;
using ProcedureRules.Diagnostics;
using ProcedureRules.Testing;

namespace ProcedureRules.ConsoleHost;

/// <summary><c>lint</c>: what in packs is likely not meant.</summary>
internal static class LintCommand
{
    public static Command Create(HostConsole console)
    {
        var folder = PathArgument.Optional("DIR", "folder of packs (default: the shipped ones)");
        var format = new Option<string>("--format") { Description = "text for people, JSON for programs", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong("text", "json");
        var command = new Command(
            "lint",
            """
            Look through packs for what loads and is likely not meant: rules that never fire, conclusions that nothing reads, cautions that can
            be lost. What is meant stands under 'accept' of its declaration, with the reason. Ends with 0 where nothing is found, 1 where packs
            could not be read, 2 where something is found.
              Example: procedure-rules lint rules
            """)
        {
            folder, format,
        };
        command.SetAction(parsed => Run(console, parsed.GetValue(folder) ?? HostFiles.Rules, parsed.GetValue(format)!));
        return command;
    }

    private static int Run(HostConsole console, string folder, string format)
    {
        var loaded = ProcedureEngine.Load(folder);
        if (loaded.Engine is not { } engine)
        {
            console.Write(loaded.Diagnostics);
            return ExitCode.CouldNotRun;
        }

        var bag = new DiagnosticBag();
        bag.AddRange(PackLint.Of(engine));
        if (format == "json") console.Output.WriteLine(bag.ToJson());
        else console.Output.Write(bag.ToSnippets());
        if (format == "text") console.Output.WriteLine($"{engine.Rules.AuthoredCount} rules, {Findings(bag.Count)}.");
        return bag.Count == 0 ? ExitCode.Done : ExitCode.Mistakes;
    }

    private static string Findings(int count) => count switch { 0 => "nothing found", 1 => "1 finding", _ => $"{count} findings" };
}
