using ProcedureRules.Diagnostics;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Compiling;

/// <summary>Compiles <c>wait</c>: from a step, or since an event whose age a fact tells, until a step.</summary>
internal sealed class WaitCompiler(CompilerContext context, Terms terms)
{
    private static readonly FactType Duration = FactType.Of(Dimension.Duration);

    public Conclusion.Wait? Compile(ConclusionDeclaration declared)
    {
        var (from, since) = (At(declared, "from"), At(declared, "since"));
        if (from is null == since is null)
        {
            context.Bag.Add(Messages.WaitFromWhere(declared.Span, isBoth: from is not null));
            return null;
        }

        var (leastText, mostText, text) = (At(declared, "least"), At(declared, "most"), At(declared, "text"));
        if (leastText is null && mostText is null)
        {
            context.Bag.Add(Messages.WaitHowLong(declared.Span));
            return null;
        }

        var until = At(declared, "until") is { } step ? terms.Step(step) : null;
        var start = from is null ? -1 : terms.Step(from);
        var (least, most) = (Value(leastText), Value(mostText));
        var words = text is null ? null : terms.Text(text);
        var anchor = since is null ? null : Since(since);
        var isWhole = until is not null && start is not null && (leastText is null || least is not null) && (mostText is null || most is not null)
            && (text is null || words is not null) && (since is null || anchor is not null);
        return isWhole ? new(start!.Value, until!.Value, least, most, words, anchor) { IfUnknown = default } : null;
    }

    private static Snippet? At(ConclusionDeclaration declared, string key) => declared.Beside.GetValueOrDefault(key);

    private ValueExpression? Value(Snippet? snippet) =>
        snippet is null ? null : terms.Value(snippet, Duration, "a wait", SourceSpan.None);

    private (int Slot, FactDefinition Fact)? Since(Snippet snippet)
    {
        if (terms.Fact(snippet) is not var (slot, fact)) return null;
        if (fact.Type.Dimension == Dimension.Duration) return (slot, fact);
        context.Bag.Add(Messages.SinceNoDuration(snippet.Span, fact.ToString(), fact.Span));
        return null;
    }
}
