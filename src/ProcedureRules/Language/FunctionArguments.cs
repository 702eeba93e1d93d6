using ProcedureRules.Quantities;

namespace ProcedureRules.Language;

/// <summary>What a function is called with: quantities, and one word for each parameter that takes a word.</summary>
/// <remarks>
/// Where several words are still open for an argument, the function is called once for each and what it gives is read as the hull; a word
/// that the function does not know makes the result "anything".
/// </remarks>
public sealed class FunctionArguments
{
    private readonly FunctionDefinition _function;
    private readonly Quantity[] _quantities;
    private readonly string[] _words;

    internal FunctionArguments(FunctionDefinition function, Quantity[] quantities, string[] words)
    {
        _function = function;
        _quantities = quantities;
        _words = words;
    }

    /// <summary>The quantity in a place.</summary>
    public Quantity this[int index] => _quantities[index];

    /// <summary>The quantity of a parameter.</summary>
    public Quantity this[string parameter] => _quantities[IndexOf(parameter)];

    /// <summary>The word of a parameter.</summary>
    public string Word(string parameter) => _words[IndexOf(parameter)];

    private int IndexOf(string parameter)
    {
        for (var i = 0; i < _function.Parameters.Count; i++)
            if (_function.Parameters[i].Name == parameter) return i;
        throw new ArgumentException($"'{_function.Name}' has no parameter '{parameter}'.", nameof(parameter));
    }
}
