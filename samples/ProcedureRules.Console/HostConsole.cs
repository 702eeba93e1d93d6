using ProcedureRules.Diagnostics;
using ProcedureRules.Reports;
using Spectre.Console;

namespace ProcedureRules.ConsoleHost;

/// <summary>Where the host writes, and reads answers: results to one side, mistakes to the other, colour only on a terminal.</summary>
internal sealed class HostConsole(TextWriter output, TextWriter error, IAnsiConsole? colour, int width)
{
    private const int LineWidth = 80;

    public TextWriter Output { get; } = output;

    public TextWriter Error { get; } = error;

    public int Width { get; } = width;

    /// <summary>Where answers come from.</summary>
    public TextReader Input { get; init; } = Console.In;

    /// <summary>What tells of changes below a folder.</summary>
    public Func<string, IFolderChanges> Watch { get; init; } = folder => new YamlChanges(folder);

    /// <summary>Colour goes through Spectre.Console, and only where a person reads: piped output stays plain.</summary>
    public static HostConsole ForTerminal() => Console.IsOutputRedirected
        ? new HostConsole(Console.Out, Console.Error, null, LineWidth)
        : new HostConsole(Console.Out, Console.Error, AnsiConsole.Console, Math.Clamp(Console.WindowWidth, 40, 100));

    public void Write(IEnumerable<ReportLine> lines)
    {
        foreach (var line in lines)
        {
            if (colour is null) Output.WriteLine(line.Text);
            else colour.Write(new Text(line.Text + Environment.NewLine, StyleOf(line.Tone)));
        }
    }

    public void Write(IEnumerable<Diagnostic> diagnostics)
    {
        foreach (var diagnostic in diagnostics) Error.WriteLine(diagnostic.ToSnippet().TrimEnd('\n'));
    }

    /// <summary>Does something long; a bar shows how far it is, only where a person watches.</summary>
    public T WithProgress<T>(string what, Func<Action<int, int>?, T> work)
    {
        if (colour is null) return work(null);
        return colour.Progress().Start(progress =>
        {
            var task = progress.AddTask(what);
            return work((done, all) => (task.MaxValue, task.Value) = (all, Math.Max(done, task.Value)));
        });
    }

    private static Style StyleOf(Tone tone) => tone switch
    {
        Tone.Heading => new Style(decoration: Decoration.Bold),
        Tone.Step => new Style(decoration: Decoration.Bold),
        Tone.Quiet => new Style(Color.Grey),
        Tone.Question => new Style(Color.Aqua),
        Tone.Hazard => new Style(Color.Red),
        Tone.Care => new Style(Color.Yellow),
        _ => Style.Plain,
    };
}
