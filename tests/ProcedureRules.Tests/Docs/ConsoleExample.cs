using ProcedureRules.ConsoleHost;

namespace ProcedureRules.Tests.Docs;

/// <summary>A console block of a page: a command line, and what it prints; <c>...</c> alone stands for lines left out.</summary>
internal sealed record ConsoleExample(string Command, IReadOnlyList<string> Expected)
{
    private const string LeftOut = "...";
    private static readonly string[] Starts = ["dotnet run --project samples/ProcedureRules.Console --", "dotnet run --project samples/ProcedureRules.Console", "procedure-rules"];

    public static ConsoleExample Of(CodeBlock block)
    {
        var lines = block.Text.TrimEnd('\n').Split('\n');
        return new ConsoleExample(lines[0], lines[1..]);
    }

    /// <summary>What the console host prints, in the folder the tests run in.</summary>
    public IReadOnlyList<string> Run()
    {
        var (output, error) = (new StringWriter { NewLine = "\n" }, new StringWriter { NewLine = "\n" });
        Host.Run([.. Arguments()], new HostConsole(output, error, null, 80));
        return (error.ToString() + output).ReplaceLineEndings("\n").TrimEnd('\n').Split('\n');
    }

    /// <summary>Whether lines are as expected, with what is left out anywhere.</summary>
    public bool Matches(IReadOnlyList<string> lines)
    {
        var at = 0;
        var isGap = false;
        foreach (var expected in Expected)
        {
            if (expected.Trim() == LeftOut)
            {
                isGap = true;
                continue;
            }

            while (isGap && at < lines.Count && lines[at] != expected) at++;
            if (at == lines.Count || lines[at] != expected) return false;
            at++;
            isGap = false;
        }

        return isGap || at == lines.Count;
    }

    // Words with blanks between them; double quotes keep blanks, as in any shell.
    private IEnumerable<string> Arguments()
    {
        var line = Command["$ ".Length..];
        var start = Starts.First(word => line.StartsWith(word, StringComparison.Ordinal));
        var quoted = line[start.Length..].Split('"');
        for (var i = 0; i < quoted.Length; i++)
        {
            if (i % 2 == 1) yield return quoted[i];
            else foreach (var word in quoted[i].Split(' ', StringSplitOptions.RemoveEmptyEntries)) yield return word;
        }
    }
}
