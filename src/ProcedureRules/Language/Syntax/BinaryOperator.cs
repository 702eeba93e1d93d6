namespace ProcedureRules.Language.Syntax;

/// <summary>An operator between two expressions.</summary>
internal enum BinaryOperator
{
    Or,
    And,
    Less,
    LessOrEqual,
    Greater,
    GreaterOrEqual,
    Add,
    Subtract,
    Multiply,
    Divide,
}
