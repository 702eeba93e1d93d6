using ProcedureRules.Diagnostics;

namespace ProcedureRules.Testing;

/// <summary>What one expectation came to.</summary>
public sealed class ExpectationResult
{
    private readonly Lazy<IReadOnlyList<string>> _because;

    internal ExpectationResult(string expected, SourceSpan span, int turn, bool isMet, string came, Func<IReadOnlyList<string>> explain)
    {
        (Expected, Span, Turn, IsMet, Came) = (expected, span, turn, isMet, came);
        _because = new(explain);
    }

    /// <summary>What was expected, as it is written.</summary>
    public string Expected { get; }

    /// <summary>Where it is written.</summary>
    public SourceSpan Span { get; }

    /// <summary>The turn it belongs to: 0 is the start, 1 the first entry of <c>next</c>.</summary>
    public int Turn { get; }

    /// <summary>Whether it is met.</summary>
    public bool IsMet { get; }

    /// <summary>What came instead; empty where it is met.</summary>
    public string Came { get; }

    /// <summary>The why, or the why not, that explains the difference. Worked out when it is first read.</summary>
    public IReadOnlyList<string> Because => _because.Value;
}
