using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Syntax;

/// <summary>A word, figure or symbol of a snippet.</summary>
internal readonly record struct Token(TokenKind Kind, string Text, int Offset, Quantity Value = default)
{
    public int Length => Text.Length;

    public int End => Offset + Text.Length;
}
