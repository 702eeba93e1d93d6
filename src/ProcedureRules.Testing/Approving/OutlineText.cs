using ProcedureRules.Explaining;

namespace ProcedureRules.Testing.Approving;

/// <summary>Outlines as lines: in full, or against one that is like them.</summary>
internal static class OutlineText
{
    /// <summary>What a line below a heading begins with.</summary>
    public const string Indent = "  ";

    /// <summary>The outline in full: each heading, and what it says below it.</summary>
    public static IReadOnlyList<string> Full(IReadOnlyList<OutlineBlock> outline) => [.. outline.SelectMany(block => block.Lines.Select(line => Indent + line).Prepend(block.Heading))];

    /// <summary>The blocks of an outline in full.</summary>
    public static IReadOnlyList<OutlineBlock> Read(IReadOnlyList<string> lines)
    {
        var blocks = new List<OutlineBlock>();
        var said = new List<string>();
        foreach (var line in lines)
        {
            if (line.StartsWith(Indent, StringComparison.Ordinal) && blocks.Count > 0) said.Add(line[Indent.Length..]);
            else blocks.Add(new OutlineBlock(line, said = []));
        }

        return [.. blocks.DistinctBy(block => block.Heading)];
    }

    /// <summary>An outline told against another: blocks that go, blocks that come in and behind which, blocks that say something else.</summary>
    public static IReadOnlyList<string> Against(IReadOnlyList<OutlineBlock> other, IReadOnlyList<OutlineBlock> outline)
    {
        var old = other.ToDictionary(block => block.Heading, StringComparer.Ordinal);
        var kept = CommonOrder.Of([.. other.Select(block => block.Heading)], [.. outline.Select(block => block.Heading)]);
        var (lines, behind) = (other.Where(block => !kept.Contains(block.Heading)).Select(block => $"- {block.Heading}").ToList(), (string?)null);
        foreach (var block in outline)
        {
            if (!kept.Contains(block.Heading))
            {
                lines.Add($"+ {block.Heading}{(behind is null ? ", first" : $", behind {behind}")}");
                lines.AddRange(block.Lines.Select(line => Indent + line));
            }
            else if (LineDifference.Between(old[block.Heading].Lines, block.Lines) is { Count: > 0 } changed)
            {
                lines.Add($"~ {block.Heading}");
                lines.AddRange(changed.Select(line => Indent + line));
            }

            behind = block.Heading;
        }

        return lines;
    }
}
