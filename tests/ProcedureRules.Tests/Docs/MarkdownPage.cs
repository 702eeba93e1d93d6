using System.Text;
using System.Text.RegularExpressions;
using ProcedureRules.Tests.Repository;

namespace ProcedureRules.Tests.Docs;

/// <summary>A Markdown page of this repository: its blocks, its tables, and the sections that are written from code.</summary>
internal sealed partial class MarkdownPage
{
    private readonly string _path;

    private MarkdownPage(string path)
    {
        _path = path;
        Text = File.ReadAllText(path).ReplaceLineEndings("\n");
        Blocks = [.. FindBlocks(Text)];
    }

    /// <summary>Whether pages are to be written anew instead of compared.</summary>
    public static bool IsUpdate { get; } = Environment.GetEnvironmentVariable("UPDATE_DOCS") == "1";

    public string Text { get; private set; }

    public IReadOnlyList<CodeBlock> Blocks { get; }

    /// <summary>The names of the generated sections, in the order of the page.</summary>
    public IReadOnlyList<string> Generated => [.. Marker().Matches(Text).Select(match => match.Groups[1].Value)];

    public static MarkdownPage Load(params string[] path) => new(RepositoryFiles.PathOf(path));

    /// <summary>What stands in a generated section.</summary>
    public string Section(string name)
    {
        var (start, end) = SpanOf(name);
        return Text[start..end];
    }

    /// <summary>Writes a generated section anew.</summary>
    public void WriteSection(string name, string text)
    {
        var (start, end) = SpanOf(name);
        Text = string.Concat(Text.AsSpan(0, start), text, Text.AsSpan(end));
    }

    /// <summary>The lines of the page outside of blocks, with their numbers from 0.</summary>
    public IEnumerable<(string Line, int Number)> Lines()
    {
        var isInBlock = false;
        foreach (var (line, number) in Text.Split('\n').Select((line, number) => (line, number)))
        {
            if (line.StartsWith("```", StringComparison.Ordinal)) isInBlock = !isInBlock;
            else if (!isInBlock) yield return (line, number);
        }
    }

    public void ReplaceLine(int number, string line)
    {
        var lines = Text.Split('\n');
        lines[number] = line;
        Text = string.Join('\n', lines);
    }

    public void Save() => File.WriteAllText(_path, Text);

    private (int Start, int End) SpanOf(string name)
    {
        var open = $"<!-- generated: {name} -->\n";
        var start = Text.IndexOf(open, StringComparison.Ordinal) + open.Length;
        var end = Text.IndexOf($"<!-- end: {name} -->", start, StringComparison.Ordinal);
        return start < open.Length || end < 0 ? throw new InvalidDataException($"{_path} has no section '{name}'") : (start, end);
    }

    private static IEnumerable<CodeBlock> FindBlocks(string text)
    {
        var section = "";
        string? language = null;
        var (block, start) = (new StringBuilder(), 0);
        foreach (var (line, number) in text.Split('\n').Select((line, index) => (line, index + 1)))
        {
            if (line.StartsWith("```", StringComparison.Ordinal) && language is null)
            {
                (language, start) = (line[3..].Trim(), number + 1);
                block.Clear();
            }
            else if (line == "```")
            {
                yield return new CodeBlock(language!, block.ToString(), start, section);
                language = null;
            }
            else if (language is not null)
            {
                block.Append(line).Append('\n');
            }
            else if (line.StartsWith("## ", StringComparison.Ordinal))
            {
                section = line[3..];
            }
        }
    }

    [GeneratedRegex("^<!-- generated: (.+) -->$", RegexOptions.Multiline)]
    private static partial Regex Marker();
}
