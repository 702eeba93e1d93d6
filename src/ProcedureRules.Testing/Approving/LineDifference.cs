namespace ProcedureRules.Testing.Approving;

/// <summary>What differs between two texts, line by line.</summary>
internal static class LineDifference
{
    private const int Most = 4_000_000;

    /// <summary>Each line that only one of them has, with <c>-</c> for the first and <c>+</c> for the second, in their order.</summary>
    public static IReadOnlyList<string> Between(IReadOnlyList<string> before, IReadOnlyList<string> after)
    {
        int start = 0, end = 0;
        while (start < Math.Min(before.Count, after.Count) && before[start] == after[start]) start++;
        while (end < Math.Min(before.Count, after.Count) - start && before[^(end + 1)] == after[^(end + 1)]) end++;
        return Middle([.. before.Skip(start).Take(before.Count - start - end)], [.. after.Skip(start).Take(after.Count - start - end)]);
    }

    private static List<string> Middle(List<string> before, List<string> after)
    {
        // Texts that have next to nothing in common are told one after the other.
        if ((long)before.Count * after.Count > Most) return [.. before.Select(line => $"- {line}"), .. after.Select(line => $"+ {line}")];
        var common = new int[before.Count + 1, after.Count + 1];
        for (var i = before.Count - 1; i >= 0; i--)
            for (var j = after.Count - 1; j >= 0; j--)
                common[i, j] = before[i] == after[j] ? common[i + 1, j + 1] + 1 : Math.Max(common[i + 1, j], common[i, j + 1]);
        var (lines, a, b) = (new List<string>(), 0, 0);
        while (a < before.Count || b < after.Count)
        {
            if (a < before.Count && b < after.Count && before[a] == after[b]) (a, b) = (a + 1, b + 1);
            else if (b == after.Count || (a < before.Count && common[a + 1, b] >= common[a, b + 1])) lines.Add($"- {before[a++]}");
            else lines.Add($"+ {after[b++]}");
        }

        return lines;
    }
}
