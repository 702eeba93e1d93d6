using System.Collections.ObjectModel;
using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Testing.Approving;
using ProcedureRules.Testing.Expectations;
using ProcedureRules.Testing.Scenarios;

namespace ProcedureRules.Testing;

/// <summary>One run of a scenario: the whole of it, or one of its rows. Immutable; may run on any thread, and again.</summary>
public sealed class ScenarioCase
{
    private readonly ProcedureEngine _engine;

    internal ScenarioCase(ProcedureEngine engine, string scenario, string? row, SourceSpan span, Situation situation, IReadOnlyList<Turn> turns)
    {
        (_engine, Scenario, Row, Span, Situation, Turns) = (engine, scenario, row, span, situation, turns);
    }

    /// <summary>The scenario's title.</summary>
    public string Scenario { get; }

    /// <summary>The row's name; null where the scenario has no rows.</summary>
    public string? Row { get; }

    /// <summary>Where the row, or the scenario, is written.</summary>
    public SourceSpan Span { get; }

    /// <summary>The title with the row's name.</summary>
    public string Name => Row is null ? Scenario : $"{Scenario}: {Row}";

    /// <summary>The vehicle, what is known of it at the start, and the jobs.</summary>
    public Situation Situation { get; }

    internal IReadOnlyList<Turn> Turns { get; }

    /// <summary>The approved plans that it is held to, by turn.</summary>
    internal IReadOnlyDictionary<int, ApprovedSection> Approved { get; private init; } = ReadOnlyDictionary<int, ApprovedSection>.Empty;

    /// <summary>Whether a plan of it is approved, so that it is held to it.</summary>
    public bool IsHeld => Approved.Count > 0;

    /// <summary>Whether its name, or the path of its file, holds some words; always where they are null.</summary>
    /// <param name="words">The words.</param>
    public bool IsMeantBy(string? words) => words is null
        || Name.Contains(words, StringComparison.OrdinalIgnoreCase)
        || Span.File?.Path.Contains(words, StringComparison.OrdinalIgnoreCase) == true;

    /// <summary>Plans turn by turn and compares each plan with what is expected of it.</summary>
    /// <param name="cancellation">Ends the run early.</param>
    public CaseResult Run(CancellationToken cancellation = default) => Run(_ => { }, cancellation);

    internal CaseResult Run(Action<Stage> seen, CancellationToken cancellation) => new CaseRun(_engine, this, seen, cancellation).Run();

    internal ScenarioCase HeldTo(IReadOnlyDictionary<int, ApprovedSection> approved) => new(_engine, Scenario, Row, Span, Situation, Turns) { Approved = approved };

    /// <inheritdoc/>
    public override string ToString() => Name;
}
