using ProcedureRules.Diagnostics;
using ProcedureRules.Language.Nodes;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Compiling;

/// <summary>What types are called in messages, with their article.</summary>
internal static class Phrases
{
    public static string Of(FactType type) => type.Dimension is { } dimension ? Dimensions.Phrase(dimension)
        : type.IsYesNo ? "a yes or no"
        : type.IsText ? "a free text"
        : $"one of the words {Messages.Either(type.Words)}";

    public static string Of(Node node) => node switch
    {
        QuantityNode quantity => Dimensions.Phrase(quantity.Dimension),
        WordsNode words => Of(words.Type),
        TruthNode => "a condition",
        _ => Of(FactType.FreeText),
    };
}
