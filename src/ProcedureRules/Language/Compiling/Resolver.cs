using ProcedureRules.Diagnostics;
using ProcedureRules.Language.Syntax;
using ProcedureRules.Packs;

namespace ProcedureRules.Language.Compiling;

/// <summary>Finds what the names in one snippet stand for; says what is wrong with a name where it stands.</summary>
internal sealed class Resolver(CompilerContext context, RuleScope scope, Snippet snippet)
{
    public CompilerContext Context { get; } = context;

    public RuleScope Scope { get; } = scope;

    public Snippet Snippet { get; } = snippet;

    public SourceSpan Span(SyntaxNode node) => Snippet.SpanOf(node.Offset, node.Length);

    public void Report(Diagnostic diagnostic) => Context.Bag.Add(diagnostic);

    /// <summary>A part variable, or the variable of a kind.</summary>
    public Variable? Part(Expression.Name name)
    {
        if (Scope.Find(name.Text) is { } variable)
        {
            if (variable.Sort == Sort.Part) return variable;
            Report(Messages.StepInsteadOfPart(Span(name), name.Text));
            return null;
        }

        if (!Context.Vocabulary.Kinds.TryGetValue(name.Text, out var kind))
        {
            var known = Scope.Variables.Where(v => v.Sort == Sort.Part).Select(v => v.Name);
            Unknown(name, "variable or kind", Scope.TakesKinds ? known.Concat(Context.Vocabulary.Kinds.Keys) : known);
            return null;
        }

        if (!MayUse(name, "kind", kind.Pack, kind.Span)) return null;
        if (Scope.TakesKinds) return Scope.Add(kind.Name, Sort.Part, kind);
        Report(Messages.KindInText(Span(name), kind.Name, Scope.Variables.Where(v => v.Sort == Sort.Part).Select(v => v.Name)));
        return null;
    }

    /// <summary>A step variable.</summary>
    public Variable? Step(Expression.Name name)
    {
        if (Scope.Find(name.Text) is { Sort: Sort.Step } step) return step;
        if (Scope.Find(name.Text) is not null || Context.Vocabulary.Kinds.ContainsKey(name.Text)) Report(Messages.PartInsteadOfStep(Span(name), name.Text));
        else Report(Messages.NotAStep(Span(name), name.Text, Scope.Steps.Select(v => v.Name)));
        return null;
    }

    public Kind? Kind(Expression.Name name) =>
        Find(name, "kind", Context.Vocabulary.Kinds) is { } found && MayUse(name, "kind", found.Pack, found.Span) ? found : null;

    public Operation? Operation(Expression.Name name) =>
        Find(name, "operation", Context.Vocabulary.Operations) is { } found && MayUse(name, "operation", found.Pack, found.Span) ? found : null;

    public Relation? Relation(Expression.Name name) =>
        Find(name, "relation", Context.Vocabulary.Relations) is { } found && MayUse(name, "relation", found.Pack, found.Span) ? found : null;

    public Cause? Cause(Expression.Name name) =>
        Find(name, "cause", Context.Vocabulary.Causes) is { } found && MayUse(name, "cause", found.Pack, found.Span) ? found : null;

    public JobDefinition? Job(Expression.Name name) =>
        Find(name, "job", Context.Vocabulary.Jobs) is { } found && MayUse(name, "job", found.Pack, found.Span) ? found : null;

    /// <summary>A word of a closed list, such as the places.</summary>
    public bool IsOneOf(Expression.Name name, string what, IReadOnlyList<string> known)
    {
        if (known.Contains(name.Text)) return true;
        Unknown(name, what, known);
        return false;
    }

    /// <summary>The fact that a path names.</summary>
    public (Variable Part, FactDefinition Fact)? Fact(Expression.Path path)
    {
        if (Member(path) is not { } member) return null;
        if (member.Fact is { } fact) return (member.Part, fact);
        Report(Messages.AspectInsteadOfFact(Span(path), PathText(path)));
        return null;
    }

    /// <summary>The aspect that a path names.</summary>
    public (Variable Part, Aspect Aspect)? Aspect(Expression.Path path)
    {
        if (Member(path) is not { } member) return null;
        if (member.Aspect is { } aspect) return (member.Part, aspect);
        Report(Messages.FactInsteadOfAspect(Span(path), PathText(path)));
        return null;
    }

    /// <summary>The fact or aspect that a path names.</summary>
    public (Variable Part, FactDefinition? Fact, Aspect? Aspect)? Member(Expression.Path path)
    {
        if (Scope.Find(path.Owner.Text) is { Sort: Sort.Step })
        {
            Report(Messages.MemberOfStep(Span(path), path.Owner.Text, path.Member.Text));
            return null;
        }

        if (Part(path.Owner) is not { Kind: { } kind } part) return null;
        var vocabulary = Context.Vocabulary;
        if (vocabulary.FactOf(kind, path.Member.Text) is { } fact)
            return MayUse(path.Member, "fact", fact.Pack, fact.Span) ? (part, fact, null) : null;
        if (vocabulary.AspectOf(kind, path.Member.Text) is { } aspect)
            return MayUse(path.Member, "aspect", aspect.Pack, aspect.Span) ? (part, null, aspect) : null;
        if (kind.Lineage().Any(general => Context.Packs.Broken.Contains($"{general.Name}.{path.Member.Text}"))) return null;
        if (Context.Packs.WithGaps.Contains(Scope.Pack)) return null;
        var known = vocabulary.Facts.Where(f => kind.IsA(f.Kind)).Select(f => f.Name)
            .Concat(vocabulary.Aspects.Where(a => kind.IsA(a.Kind)).Select(a => a.Name));
        var owners = vocabulary.Facts.Where(f => f.Name == path.Member.Text).Select(f => f.Kind.Name)
            .Concat(vocabulary.Aspects.Where(a => a.Name == path.Member.Text).Select(a => a.Kind.Name));
        Report(Messages.UnknownMember(Span(path.Member), kind.Name, path.Member.Text, known, owners));
        return null;
    }

    /// <summary>A state condition: <c>x.aspect is STATE</c>.</summary>
    public StateCondition? State(Expression expression)
    {
        if (expression is not Expression.Is { Left: Expression.Path path } condition)
        {
            Report(Messages.NotAState(Span(expression)));
            return null;
        }

        if (Aspect(path) is not { } found) return null;
        NodeList<Expression.Name> words = condition.Right switch
        {
            Expression.Name name => [name],
            Expression.Words list => list.Items,
            _ => [],
        };
        if (words.Count == 0)
        {
            Report(Messages.StateDue(Span(condition.Right), PathText(path), found.Aspect.States));
            return null;
        }

        var bits = 0UL;
        foreach (var word in words)
        {
            if (StateIndex(word, found.Aspect) is not { } index) return null;
            bits |= StateSet.Of(index).Bits;
        }

        var states = new StateSet(bits);
        return new(found.Part.Slot, found.Aspect, condition.IsNegated ? states.Complement(found.Aspect) : states);
    }

    public int? StateIndex(Expression.Name name, Aspect aspect)
    {
        if (aspect.IndexOf(name.Text) is >= 0 and var index) return index;
        Report(Messages.UnknownState(Span(name), name.Text, aspect.ToString(), aspect.States));
        return null;
    }

    /// <summary>An argument that must be the name of a part.</summary>
    public Variable? PartArgument(Expression argument, string of)
    {
        if (argument is Expression.Name name) return Part(name);
        Report(Messages.PartArgumentDue(Span(argument), of));
        return null;
    }

    /// <summary>Whether a variable can stand for a part of the kind that is due; a more general one can where the condition narrows it.</summary>
    public bool Fits(Variable part, Kind due, Expression argument, string of, SourceSpan declared, bool narrows)
    {
        if (part.Kind!.IsA(due) || (narrows && due.IsA(part.Kind))) return true;
        Report(Messages.WrongKind(Span(argument), of, due.Name, part.Kind.Name, declared));
        return false;
    }

    public void Unknown(Expression.Name name, string what, IEnumerable<string> known)
    {
        if (Context.Packs.Broken.Contains(name.Text) || Context.Packs.WithGaps.Contains(Scope.Pack)) return;
        Report(Messages.UnknownName(Span(name), what, name.Text, known));
    }

    public static string PathText(Expression.Path path) => $"{path.Owner.Text}.{path.Member.Text}";

    private T? Find<T>(Expression.Name name, string what, IReadOnlyDictionary<string, T> all)
        where T : class
    {
        if (all.TryGetValue(name.Text, out var found)) return found;
        Unknown(name, what, all.Keys);
        return null;
    }

    private bool MayUse(Expression.Name name, string what, string definedIn, SourceSpan declared)
    {
        if (Context.Packs.MayUse(Scope.Pack, definedIn)) return true;
        Report(Messages.PackNotUsed(Span(name), what, name.Text, definedIn, declared));
        return false;
    }
}
