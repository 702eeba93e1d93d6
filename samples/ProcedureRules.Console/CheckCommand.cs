using System.CommandLine;

namespace ProcedureRules.ConsoleHost;

/// <summary><c>check</c>: loads packs and prints every mistake.</summary>
internal static class CheckCommand
{
    public static Command Create(HostConsole console)
    {
        var folder = PathArgument.Optional("DIR", "folder of packs (default: the shipped ones)");
        var command = new Command(
            "check",
            """
            Load packs and print every mistake in them.
              Example: procedure-rules check rules
            """)
        {
            folder,
        };
        command.SetAction(parsed =>
        {
            var loaded = ProcedureEngine.Load(parsed.GetValue(folder) ?? HostFiles.Rules);
            console.Write(loaded.Diagnostics);
            if (loaded.Engine is not { } engine) return ExitCode.Mistakes;
            foreach (var pack in engine.Packs) console.Output.WriteLine($"{pack.Name} {pack.Version}: {pack.About}");
            console.Output.WriteLine(
                $"{engine.Packs.Count} packs, {engine.Rules.AuthoredCount} rules, {engine.Vocabulary.Operations.Count} operations, {engine.Vocabulary.Jobs.Count} jobs, no mistakes.");
            return ExitCode.Done;
        });
        return command;
    }
}
