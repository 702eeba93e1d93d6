using ProcedureRules.Quantities;

namespace ProcedureRules.Language;

/// <summary>A function that packs can call: one of the library's, or one that an embedding program offers.</summary>
/// <remarks>
/// It works on intervals: what it gives must hold every result that any figures within the arguments could have, and narrower arguments
/// must not give a wider result; then what a plan calls sure is sure. It must depend on nothing but its arguments and be
/// safe on many threads. An exception, or a result of another dimension, counts as "anything" and is reported, never thrown.
/// </remarks>
public sealed class FunctionDefinition
{
    /// <summary>Its name, in lower-case words.</summary>
    public required string Name { get; init; }

    /// <summary>What it takes.</summary>
    public required IReadOnlyList<FunctionParameter> Parameters { get; init; }

    /// <summary>What it gives.</summary>
    public required Dimension Returns { get; init; }

    /// <summary>One sentence for the reference.</summary>
    public required string Documentation { get; init; }

    /// <summary>The published source it rests on, or what it rests on otherwise; empty for plain reckoning.</summary>
    public string Basis { get; init; } = "";

    /// <summary>What it does.</summary>
    public required Func<FunctionArguments, Quantity> Implementation { get; init; }

    /// <summary>How it is called, such as <c>spring_rate(load: force, travel: length)</c>.</summary>
    public string Signature =>
        $"{Name}({string.Join(", ", Parameters.Select(parameter => $"{parameter.Name}: {parameter.Takes}"))})";
}
