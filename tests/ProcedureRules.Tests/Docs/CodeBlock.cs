namespace ProcedureRules.Tests.Docs;

/// <summary>A fenced block of a Markdown page.</summary>
/// <param name="Language">The word behind the opening fence.</param>
/// <param name="Text">What is in it; lines end with LF.</param>
/// <param name="Line">The line of the page on which the text starts, from 1.</param>
/// <param name="Section">The second-level heading it stands under.</param>
internal sealed record CodeBlock(string Language, string Text, int Line, string Section)
{
    /// <summary>The first key of a YAML block.</summary>
    public string FirstKey => Text.Split('\n').First(line => line.Length > 0 && line[0] != '#').Split(':')[0];
}
