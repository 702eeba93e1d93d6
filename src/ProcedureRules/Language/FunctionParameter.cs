using ProcedureRules.Quantities;

namespace ProcedureRules.Language;

/// <summary>A parameter of a function that packs can call: a quantity of a dimension, or one of some words.</summary>
public sealed class FunctionParameter
{
    /// <summary>A parameter that takes a quantity.</summary>
    public FunctionParameter(string name, Dimension dimension)
    {
        Name = name;
        Dimension = dimension;
    }

    /// <summary>A parameter that takes one of some words, such as the name of a refrigerant.</summary>
    public FunctionParameter(string name, IReadOnlyList<string> words)
    {
        Name = name;
        Words = words;
    }

    /// <summary>Its name, for the reference and for messages.</summary>
    public string Name { get; }

    /// <summary>What it takes; null where it takes a word.</summary>
    public Dimension? Dimension { get; }

    /// <summary>The words it takes; empty where it takes a quantity.</summary>
    public IReadOnlyList<string> Words { get; } = [];

    /// <summary>What it takes, in words.</summary>
    public string Takes => Dimension is { } dimension ? Dimensions.Name(dimension) : string.Join(" or ", Words);
}
