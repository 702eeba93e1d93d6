using System.Text;
using ProcedureRules.Diagnostics;

namespace ProcedureRules.Testing.Approving;

/// <summary>A file of approved plans beside a file of scenarios: a section for each plan, in full or against the section it is likest to.</summary>
internal static class ApprovedFile
{
    private const string Folder = "approved";
    private const string Extension = ".txt";
    private const string Mark = "== ";
    private const string LikeMark = "like: ";

    // What is told against another and is hardly shorter than in full is better read in full.
    private const double Shorter = 0.7;

    /// <summary>Where the approved plans of a file of scenarios are.</summary>
    public static string PathFor(string scenarios) =>
        Path.Combine(Path.GetDirectoryName(scenarios) ?? "", Folder, Path.GetFileNameWithoutExtension(scenarios) + Extension).Replace('\\', '/');

    /// <summary>The files of approved plans below a folder, by path.</summary>
    public static IEnumerable<string> Under(string folder)
    {
        var options = new EnumerationOptions { RecurseSubdirectories = true, MaxRecursionDepth = 16, IgnoreInaccessible = true };
        return !Directory.Exists(folder) ? [] : Directory.EnumerateFiles(folder, "*" + Extension, options).Select(path => path.Replace('\\', '/'))
            .Where(path => Path.GetFileName(Path.GetDirectoryName(path)) == Folder).Order(StringComparer.Ordinal);
    }

    /// <summary>The sections of a file by name; a section that cannot be read is complained about.</summary>
    public static IReadOnlyDictionary<string, ApprovedSection> Read(SourceFile file, DiagnosticBag bag)
    {
        var sections = new Dictionary<string, ApprovedSection>(StringComparer.Ordinal);
        var starts = Enumerable.Range(1, file.LineCount).Where(line => file.LineText(line).StartsWith(Mark, StringComparison.Ordinal)).ToList();
        for (var i = 0; i < starts.Count; i++)
        {
            var name = file.LineText(starts[i])[Mark.Length..];
            var span = file.Span(file.OffsetOf(starts[i]) + Mark.Length, name.Length);
            var end = i + 1 < starts.Count ? starts[i + 1] : file.LineCount + 1;
            var lines = Enumerable.Range(starts[i] + 1, end - starts[i] - 1).Select(file.LineText).Where(line => line.Length > 0).ToList();
            var like = lines is [var first, ..] && first.StartsWith(LikeMark, StringComparison.Ordinal) ? first[LikeMark.Length..] : null;
            if (sections.ContainsKey(name)) bag.Add(Messages.ApprovedTwice(span, name));
            else if (like is null) sections[name] = new ApprovedSection(name, null, lines, span);
            else if (sections.TryGetValue(like, out var other) && other.Like is null) sections[name] = new ApprovedSection(name, other, lines[1..], span);
            else bag.Add(Messages.ApprovedAgainstNothing(span, name, like));
        }

        return sections;
    }

    /// <summary>The text of a file: its plans in the order given.</summary>
    public static string Write(string scenarios, IEnumerable<(string Name, IReadOnlyList<OutlineBlock> Outline)> plans)
    {
        var text = new StringBuilder($"Approved plans of {Path.GetFileName(scenarios)}, printed by 'test --approve'. Read what changes before it is kept.\n");
        var full = new List<(string Name, IReadOnlyList<OutlineBlock> Outline)>();
        foreach (var plan in plans)
        {
            var lines = OutlineText.Full(plan.Outline);
            var likest = full.Select(other => (other.Name, Lines: OutlineText.Against(other.Outline, plan.Outline))).OrderBy(other => Size(other.Lines)).Take(1).ToList();
            text.Append('\n').Append(Mark).Append(plan.Name).Append('\n');
            if (likest is [var (like, against)] && Size(against) < Shorter * Size(lines)) text.Append(LikeMark).Append(like).Append('\n').AppendJoin("\n", against.Append(""));
            else
            {
                full.Add(plan);
                text.AppendJoin("\n", lines.Append(""));
            }
        }

        return text.ToString();
    }

    private static int Size(IReadOnlyList<string> lines) => lines.Sum(line => line.Length + 1);
}
