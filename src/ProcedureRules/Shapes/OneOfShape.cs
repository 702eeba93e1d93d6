namespace ProcedureRules.Shapes;

/// <summary>A value that can be written in several ways, told apart by kind or by a key.</summary>
/// <remarks>
/// At most one way is a single text (word, number, yes or no), one a list, and one a mapping without a deciding key. Of
/// the mappings with a key, the first whose key is written is meant. So it is always clear which way a writer meant,
/// and only that way's mistakes are told.
/// </remarks>
internal sealed class OneOfShape : Shape
{
    /// <summary>Makes a choice.</summary>
    /// <param name="noun">What the value is, with its article: <c>a conclusion</c>.</param>
    /// <param name="alternatives">The ways to write it, in the order of the reference.</param>
    public OneOfShape(string noun, params IReadOnlyList<Alternative> alternatives)
    {
        Noun = noun;
        Alternatives = alternatives;
    }

    /// <summary>What the value is, with its article.</summary>
    public string Noun { get; }

    /// <summary>The ways to write it, in the order of the reference.</summary>
    public IReadOnlyList<Alternative> Alternatives { get; }

    /// <summary>The keys that decide.</summary>
    public IEnumerable<string> Keys => Alternatives.Select(way => way.Key).OfType<string>();

    /// <summary>The way to write a single text, if there is one.</summary>
    public Shape? Scalar => OfKind(shape => shape is TextShape or WordShape or YesNoShape or IntegerShape);

    /// <summary>The way to write a list, if there is one.</summary>
    public Shape? List => OfKind(shape => shape is ListShape);

    /// <summary>The mapping without a deciding key, if there is one.</summary>
    public Shape? Map => OfKind(shape => shape is MapShape or DictionaryShape);

    private Shape? OfKind(Func<Shape, bool> fits) =>
        Alternatives.FirstOrDefault(way => way.Key is null && fits(RefShape.Resolve(way.Shape)))?.Shape;
}
