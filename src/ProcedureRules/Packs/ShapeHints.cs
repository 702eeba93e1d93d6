using ProcedureRules.Diagnostics;

namespace ProcedureRules.Packs;

/// <summary>Adds to a complaint about a key what most likely led to it.</summary>
internal static class ShapeHints
{
    /// <summary>The complaint with its hint, or as it is.</summary>
    public static Diagnostic AddTo(Diagnostic diagnostic)
    {
        if (diagnostic.Code != "PR0101" || diagnostic.Span.File is not { } file)
            return diagnostic;
        var key = file.Text.AsSpan(diagnostic.Span.Offset, diagnostic.Span.Length);
        if (key.ContainsAny(')', ']'))
            return Messages.SplitValue(diagnostic);
        return ConclusionShapes.Keywords.Contains(key.ToString()) && diagnostic.Message.Contains("the conclusion", StringComparison.Ordinal)
            ? Messages.SecondConclusion(diagnostic)
            : diagnostic;
    }
}
