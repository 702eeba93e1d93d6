using System.CommandLine;

namespace ProcedureRules.ConsoleHost;

/// <summary>The options of every command that works on a work order, and how the order is opened with them.</summary>
internal sealed class OrderOptions
{
    private readonly Option<string?> _vehicle = new("--vehicle") { Description = "vehicle sheet to use instead of the order's own", HelpName = "SHEET.yaml" };
    private readonly Option<string?> _rules = new("--rules") { Description = "folder of packs (default: the shipped ones)", HelpName = "DIR" };
    private readonly Option<string[]> _set = new("--set")
    {
        Description = "state a fact, a relation or a part; may be repeated",
        HelpName = "fact=value",
        AllowMultipleArgumentsPerToken = false,
    };

    private readonly Option<string[]> _choose = new("--choose")
    {
        Description = "fix a way, with the ids that the plan prints beside the ways; may be repeated",
        HelpName = "CHOICE=WAY",
        AllowMultipleArgumentsPerToken = false,
    };

    public void AddTo(Command command)
    {
        command.Add(_vehicle);
        command.Add(_rules);
        command.Add(_set);
        command.Add(_choose);
    }

    /// <summary>Loads the packs and opens the order; on a mistake writes it and gives the exit code instead.</summary>
    public ProcedureSession? Open(ParseResult parsed, string order, HostConsole console, out int exit)
    {
        exit = ExitCode.Mistakes;
        var loaded = ProcedureEngine.Load(parsed.GetValue(_rules) ?? HostFiles.Rules);
        console.Write(loaded.Diagnostics);
        if (loaded.Engine is not { } engine) return null;

        var opened = engine.Open(order, parsed.GetValue(_vehicle));
        console.Write(opened.Diagnostics);
        if (opened.Session is not { } session) return null;

        var mistakes = (parsed.GetValue(_set) ?? []).SelectMany(session.State).Concat((parsed.GetValue(_choose) ?? []).SelectMany(session.Choose)).ToList();
        console.Write(mistakes);
        if (mistakes.Any(mistake => mistake.Severity == Diagnostics.Severity.Error)) return null;

        exit = ExitCode.Done;
        return session;
    }
}
