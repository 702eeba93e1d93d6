using ProcedureRules.Diagnostics;

namespace ProcedureRules.Testing;

/// <summary>Whose plans are approved: of every case, of those that are held to a plan already, or of cases by name.</summary>
public sealed class ApprovalScope
{
    private const string OfAll = "all";
    private const string OfHeld = "held";

    private readonly IReadOnlyList<string> _names;
    private readonly string? _filter;

    private ApprovalScope(IReadOnlyList<string> names, string? filter) => (_names, _filter) = (names, filter);

    /// <summary>Every case.</summary>
    public static ApprovalScope All { get; } = Of([OfAll]);

    /// <summary>Every case that is held to an approved plan.</summary>
    public static ApprovalScope Held { get; } = Of([OfHeld]);

    /// <summary>The scope of some words, all of them together.</summary>
    /// <param name="words"><c>all</c>, <c>held</c>, the whole name of a case, or the title of a scenario for all of its rows.</param>
    /// <param name="filter">Only cases of these whose name, or whose file, holds these words; null: all of them.</param>
    public static ApprovalScope Of(IReadOnlyList<string> words, string? filter = null)
    {
        ArgumentNullException.ThrowIfNull(words);
        return new ApprovalScope(words, filter);
    }

    internal bool Means(ScenarioCase one) => one.IsMeantBy(_filter)
        && _names.Any(name => name switch { OfAll => true, OfHeld => one.IsHeld, _ => name == one.Name || name == one.Scenario });

    /// <summary>The names that no case has.</summary>
    internal IEnumerable<Diagnostic> Mistakes(IReadOnlyList<ScenarioCase> cases)
    {
        var known = cases.SelectMany(one => new[] { one.Name, one.Scenario }).Append(OfAll).Append(OfHeld).ToHashSet(StringComparer.Ordinal);
        return _names.Where(name => !known.Contains(name)).Select(name => Messages.NoSuchCase(new SourceFile("approve", name).Span(0, name.Length), name, known));
    }
}
