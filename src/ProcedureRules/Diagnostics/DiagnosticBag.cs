namespace ProcedureRules.Diagnostics;

/// <summary>Collects the mistakes of a run, so that all of them are told at once and in order.</summary>
/// <remarks>Not safe for use by several threads at a time.</remarks>
public sealed class DiagnosticBag
{
    /// <summary>How many diagnostics the texts show; what is beyond is counted.</summary>
    public const int MostShown = 200;

    private readonly List<Diagnostic> _all = [];
    private readonly HashSet<(string Path, int Offset, string Code, string Message)> _seen = [];

    /// <summary>How many different diagnostics there are.</summary>
    public int Count => _all.Count;

    /// <summary>Whether one of them is an error.</summary>
    public bool HasErrors { get; private set; }

    /// <summary>Adds a diagnostic; the same one at the same place counts once.</summary>
    /// <param name="diagnostic">What to add.</param>
    public void Add(Diagnostic diagnostic)
    {
        ArgumentNullException.ThrowIfNull(diagnostic);
        var span = diagnostic.Span;
        if (!_seen.Add((span.File?.Path ?? "", span.Offset, diagnostic.Code, diagnostic.Message)))
            return;

        _all.Add(diagnostic);
        HasErrors |= diagnostic.Severity == Severity.Error;
    }

    /// <summary>Adds several diagnostics.</summary>
    /// <param name="diagnostics">What to add.</param>
    public void AddRange(IEnumerable<Diagnostic> diagnostics)
    {
        ArgumentNullException.ThrowIfNull(diagnostics);
        foreach (var diagnostic in diagnostics)
            Add(diagnostic);
    }

    /// <summary>The diagnostics by file, place and code.</summary>
    public IReadOnlyList<Diagnostic> Ordered() =>
        [.. _all
            .OrderBy(diagnostic => diagnostic.Span.File?.Path ?? "", StringComparer.Ordinal)
            .ThenBy(diagnostic => diagnostic.Span.Offset)
            .ThenBy(diagnostic => diagnostic.Code, StringComparer.Ordinal)
            .ThenBy(diagnostic => diagnostic.Message, StringComparer.Ordinal)];

    /// <summary>One line each, for build logs; each line ends with LF.</summary>
    public string ToLines() => Text(diagnostic => diagnostic.ToLine());

    /// <summary>Each with its source line and caret, for people; each line ends with LF.</summary>
    public string ToSnippets() => Text(diagnostic => diagnostic.ToSnippet());

    /// <summary>All of them as a JSON array.</summary>
    public string ToJson() => DiagnosticJson.ToJson(Ordered());

    private string Text(Func<Diagnostic, string> render)
    {
        var lines = Ordered().Take(MostShown).Select(render).ToList();
        if (Count > MostShown)
            lines.Add($"and {Count - MostShown} more");

        return string.Concat(lines.Select(line => line + "\n"));
    }
}
