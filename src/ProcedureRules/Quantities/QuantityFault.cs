namespace ProcedureRules.Quantities;

/// <summary>Why a text is no quantity, and where.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Message">The same as a sentence without a full stop.</param>
/// <param name="Offset">Where in the text it is, from zero.</param>
/// <param name="Length">How many characters it spans; zero at the end of the text.</param>
/// <param name="Suggestion">What could stand in its place, if something is near.</param>
public sealed record QuantityFault(QuantityFaultKind Kind, string Message, int Offset, int Length, string? Suggestion = null)
{
    /// <inheritdoc/>
    public override string ToString() => Suggestion is null ? Message : $"{Message}; did you mean {Suggestion}?";
}
