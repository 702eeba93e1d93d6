namespace ProcedureRules.Language.Syntax;

/// <summary>What a token is.</summary>
internal enum TokenKind
{
    /// <summary>The end of the text.</summary>
    End,

    /// <summary>A word.</summary>
    Name,

    /// <summary>A figure with or without a unit.</summary>
    Figure,

    /// <summary>An operator, a bracket, or a character that the language does not know.</summary>
    Symbol,
}
