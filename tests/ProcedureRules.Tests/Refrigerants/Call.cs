using ProcedureRules.Language;
using ProcedureRules.Quantities;

namespace ProcedureRules.Tests.Refrigerants;

/// <summary>Calls functions of the packs as the language does.</summary>
internal static class Call
{
    /// <summary>What a function gives for arguments written as packs write them.</summary>
    public static Quantity Of(string name, params string[] arguments)
    {
        var function = ProcedureEngine.Functions.Find(name)!;
        var quantities = arguments.Select((text, i) => function.Parameters[i].Dimension is { } dimension ? Read(text, dimension) : default).ToArray();
        return With(name, arguments, quantities);
    }

    /// <summary>What a function gives for quantities, behind the word of a refrigerant where it takes one.</summary>
    public static Quantity Of(string name, string word, Quantity first, params Quantity[] more) => With(name, [word], [default, first, .. more]);

    public static Quantity Of(string name, params Quantity[] quantities) => With(name, [], quantities);

    private static Quantity With(string name, string[] words, Quantity[] quantities)
    {
        var function = ProcedureEngine.Functions.Find(name)!;
        var result = function.Implementation(new FunctionArguments(function, quantities, [.. words, .. Enumerable.Repeat("", function.Parameters.Count - words.Length)]));
        return result.Dimension == function.Returns ? result : throw new InvalidOperationException($"{name} gave {Dimensions.Phrase(result.Dimension)}");
    }

    private static Quantity Read(string text, Dimension dimension) =>
        Quantity.TryRead(text, dimension, out var value, out var fault) ? value : throw new FormatException($"'{text}': {fault}");
}
