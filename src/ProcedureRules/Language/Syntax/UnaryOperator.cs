namespace ProcedureRules.Language.Syntax;

/// <summary>An operator before one expression.</summary>
internal enum UnaryOperator
{
    Not,
    Minus,
}
