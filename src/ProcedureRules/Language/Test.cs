using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Language.Nodes;
using ProcedureRules.Logic;

namespace ProcedureRules.Language;

/// <summary>A checked truth-valued expression of a rule, as a tree of typed delegates.</summary>
public sealed class Test
{
    /// <summary>The expression as written.</summary>
    public required string Text { get; init; }

    /// <summary>Where it is written.</summary>
    public SourceSpan Span { get; init; }

    /// <summary>Its truth under a binding.</summary>
    public required Func<IBeliefs, Binding, Truth> Evaluate { get; init; }

    /// <summary>The keys it reads under a binding; the parts of a kind are given by the second argument.</summary>
    public required Func<Binding, Func<Packs.Kind, IReadOnlyList<Part>>, IEnumerable<Reading>> Reads { get; init; }

    /// <summary>Tells what it reads without making objects of it; null where only <see cref="Reads"/> does.</summary>
    internal Action<IReadings, Binding, Func<Packs.Kind, IReadOnlyList<Part>>>? TellReads { get; init; }

    /// <summary>The checked expression; null where a program made the test.</summary>
    internal TruthNode? Node { get; init; }

    /// <summary>
    /// Values at which the truth can turn, for a fact that is compared with something fixed: (fact path under a binding, threshold). Questions
    /// are split there.
    /// </summary>
    public Func<Binding, IBeliefs, IEnumerable<(FactKey Key, Quantities.Quantity Threshold)>>? Thresholds { get; init; }
}
