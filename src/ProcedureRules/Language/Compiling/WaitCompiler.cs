using ProcedureRules.Diagnostics;
using ProcedureRules.Language.Syntax;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Compiling;

/// <summary>Compiles <c>wait</c>: from a step, or since an event whose age a fact tells, until a step.</summary>
internal sealed class WaitCompiler(CompilerContext context, RuleParts rule, ConclusionCompiler conclusions)
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

        var until = At(declared, "until") is { } step ? conclusions.StepNamed(step) : null;
        var start = from is null ? -1 : conclusions.StepNamed(from);
        var (least, most) = (Value(leastText), Value(mostText));
        var words = text is null ? null : conclusions.Text(text);
        var anchor = since is null ? null : Since(since);
        var isWhole = until is not null && start is not null && (leastText is null || least is not null) && (mostText is null || most is not null)
            && (text is null || words is not null) && (since is null || anchor is not null);
        return isWhole ? new(start!.Value, until!.Value, least, most, words, anchor) { IfUnknown = default } : null;
    }

    private static Snippet? At(ConclusionDeclaration declared, string key) => declared.Beside.GetValueOrDefault(key);

    private ValueExpression? Value(Snippet? snippet) =>
        snippet is null ? null : conclusions.Value(snippet, Duration, "a wait", SourceSpan.None);

    private (int Slot, FactDefinition Fact)? Since(Snippet snippet)
    {
        if (Parser.Path(snippet, context.Bag) is not { } path) return null;
        var names = new Resolver(context, rule.Scope, snippet);
        if (names.Fact(path) is not { } found) return null;
        if (found.Fact.Type.Dimension == Dimension.Duration) return (found.Part.Slot, found.Fact);
        names.Report(Messages.SinceNoDuration(names.Span(path), found.Fact.ToString(), found.Fact.Span));
        return null;
    }
}
