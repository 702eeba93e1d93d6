namespace ProcedureRules.Language.Syntax;

/// <summary><c>s before t</c>.</summary>
internal sealed record OrderSyntax(Expression.Name First, Expression.Name Second) : SyntaxNode;
