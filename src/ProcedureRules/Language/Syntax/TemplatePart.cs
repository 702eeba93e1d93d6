namespace ProcedureRules.Language.Syntax;

/// <summary>A piece of a template.</summary>
internal abstract record TemplatePart : SyntaxNode
{
    private TemplatePart() { }

    /// <summary>Plain text, its doubled braces resolved.</summary>
    public sealed record Plain(string Text) : TemplatePart;

    /// <summary>An expression whose value is written in its place.</summary>
    public sealed record Hole(Expression Expression) : TemplatePart;
}
