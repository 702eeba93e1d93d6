namespace ProcedureRules.Tests.Packs;

/// <summary>Spoils a text as a tired writer does, and a little worse.</summary>
internal static class Mutation
{
    private static readonly string[] Pieces =
        ["[]", "{}", "~", "''", "\"", "- ", ": ", "  ", "[", "]", "{", "}", ",", "(", ")", "|", "->", "..", "any", "before", "it", "part", "vehicle", "no", "unknown", "1e999 in", "-3 psi", "\n", "\t", "#", "&a", "*a"];

    /// <summary>The text with some mistakes in it; the same seed gives the same mistakes.</summary>
    public static string Spoil(string text, int seed)
    {
        var random = new Random(seed);
        for (var mistakes = random.Next(1, 6); mistakes > 0; mistakes--)
            text = SpoilOnce(text, random);
        return text;
    }

    private static string SpoilOnce(string text, Random random)
    {
        if (text.Length == 0)
            return Pieces[random.Next(Pieces.Length)];
        var lines = text.Split('\n').ToList();
        var (line, at) = (random.Next(lines.Count), random.Next(text.Length));
        switch (random.Next(8))
        {
            case 0:
                lines.RemoveAt(line);
                return string.Join('\n', lines);
            case 1:
                lines.Insert(random.Next(lines.Count), lines[line]);
                return string.Join('\n', lines);
            case 2:
                lines[line] = new string(' ', random.Next(9)) + lines[line].TrimStart();
                return string.Join('\n', lines);
            case 3:
                var colon = lines[line].IndexOf(": ", StringComparison.Ordinal);
                if (colon >= 0) lines[line] = lines[line][..(colon + 2)] + Pieces[random.Next(Pieces.Length)];
                return string.Join('\n', lines);
            case 4:
                return text.Insert(at, Pieces[random.Next(Pieces.Length)]);
            case 5:
                return text.Remove(at, Math.Min(random.Next(1, 12), text.Length - at));
            case 6:
                return SwapWords(text, random);
            default:
                return text[..at] + (char)random.Next(32, 127) + text[(at + 1)..];
        }
    }

    private static string SwapWords(string text, Random random)
    {
        var words = text.Split(' ');
        var (a, b) = (random.Next(words.Length), random.Next(words.Length));
        (words[a], words[b]) = (words[b], words[a]);
        return string.Join(' ', words);
    }
}
