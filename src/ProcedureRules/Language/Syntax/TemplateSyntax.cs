namespace ProcedureRules.Language.Syntax;

/// <summary>A text with expressions in braces.</summary>
internal sealed record TemplateSyntax(NodeList<TemplatePart> Parts) : SyntaxNode;
