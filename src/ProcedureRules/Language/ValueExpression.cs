using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Language.Nodes;
using ProcedureRules.Packs;

namespace ProcedureRules.Language;

/// <summary>A checked value expression of a rule, as a tree of typed delegates.</summary>
public sealed class ValueExpression
{
    /// <summary>The expression as written.</summary>
    public required string Text { get; init; }

    /// <summary>Where it is written.</summary>
    public SourceSpan Span { get; init; }

    /// <summary>The type of its values.</summary>
    public required FactType Type { get; init; }

    /// <summary>Its value under a binding.</summary>
    public required Func<IBeliefs, Binding, Value> Evaluate { get; init; }

    /// <summary>The keys it reads under a binding.</summary>
    public required Func<Binding, Func<Kind, IReadOnlyList<Part>>, IEnumerable<Reading>> Reads { get; init; }

    /// <summary>Tells what it reads without making objects of it; null where only <see cref="Reads"/> does.</summary>
    internal Action<IReadings, Binding, Func<Kind, IReadOnlyList<Part>>>? TellReads { get; init; }

    /// <summary>The checked expression; null where a program made the value.</summary>
    internal Node? Node { get; init; }
}
