using ProcedureRules.Diagnostics;
using ProcedureRules.Language.Syntax;
using ProcedureRules.Packs;
using ProcedureRules.Yaml;

namespace ProcedureRules.Language.Compiling;

/// <summary>Compiles the rules that packs write.</summary>
internal sealed class AuthoredRules(CompilerContext context)
{
    public const string StepSort = "step";

    /// <summary>The rules that it comes to; none where something in it is wrong, and everything that is wrong has been told.</summary>
    public IReadOnlyList<CompiledRule> Compile(RuleDeclaration declared)
    {
        var rule = new RuleParts(declared.Name, new(declared.Pack), declared.Span);
        var isWhole = Declare(declared.Variables, rule.Scope);
        isWhole &= Conditions(declared.When, rule);
        var group = new RuleGroup(context, rule);
        foreach (var written in declared.Then)
        {
            isWhole &= group.Add((RuleParts fork) =>
                new ConclusionCompiler(context, fork, declared.IfUnknown).Compile(written) is { } conclusion && MomentsGuard(conclusion, written, rule) ? conclusion : null);
        }

        var because = declared.Because is { } reason ? new Terms(context, rule).Text(reason) : null;
        isWhole &= declared.Because is null || because is not null;
        // What follows would only repeat a mistake that is told already.
        return isWhole && AreBound(declared.Variables, rule) && CanFire(rule) ? [.. group.Build(declared.Pack, because, declared.Basis)] : [];
    }

    public bool Declare(IReadOnlyList<(YamlScalar Name, Snippet Sort)> variables, RuleScope scope)
    {
        var isWhole = true;
        foreach (var (name, sort) in variables)
        {
            if (Operators.Keywords.Contains(name.Text) || context.Functions.Names.Contains(name.Text))
            {
                context.Bag.Add(Messages.ReservedName(name.Span, name.Text));
                isWhole = false;
            }

            if (scope.Find(name.Text) is not null) continue;
            if (sort.Text == StepSort)
            {
                scope.Add(name.Text, Sort.Step, null);
            }
            else if (context.Vocabulary.Kinds.TryGetValue(sort.Text, out var kind))
            {
                scope.Add(name.Text, Sort.Part, kind);
                if (context.Packs.MayUse(scope.Pack, kind.Pack)) continue;
                context.Bag.Add(Messages.PackNotUsed(sort.Span, "kind", kind.Name, kind.Pack, kind.Span));
                isWhole = false;
            }
            else
            {
                // The variable is there all the same, so that its uses are not complained about too.
                scope.Add(name.Text, Sort.Part, context.Vocabulary.Kinds.GetValueOrDefault(Vocabulary.RootKind));
                new Resolver(context, scope, sort).Unknown(
                    new(sort.Text) { Length = sort.Text.Length }, "kind", context.Vocabulary.Kinds.Keys.Append(StepSort));
                isWhole = false;
            }
        }

        return isWhole;
    }

    public bool Conditions(IReadOnlyList<Snippet> when, RuleParts rule)
    {
        var conditions = new ConditionCompiler(context, rule);
        var isWhole = true;
        foreach (var snippet in when) isWhole &= conditions.Compile(snippet);
        return isWhole;
    }

    /// <summary>Every declared variable is bound by a relation, a step or the job; a kind's own variable stands for each part of it.</summary>
    public bool AreBound(IReadOnlyList<(YamlScalar Name, Snippet Sort)> variables, RuleParts rule)
    {
        var isWhole = true;
        foreach (var (name, sort) in variables)
        {
            if (rule.Scope.Find(name.Text) is not { } variable || rule.IsBound(variable)) continue;
            // "Any step" is said by the states it is guarded with; without them it would be a rule about everything.
            if (variable.Sort == Sort.Step && rule.Moments.Count > 0) continue;
            context.Bag.Add(variable.Sort == Sort.Step ? Messages.UnboundStep(name.Span, name.Text) : Messages.UnboundPart(name.Span, name.Text, sort.Text));
            isWhole = false;
        }

        return isWhole;
    }

    /// <summary>Whether the conditions can hold, each and together.</summary>
    public bool CanFire(RuleParts rule)
    {
        var together = new Contradictions(context.Bag);
        var outcomes = new Outcomes(context, rule.Scope);
        var isWhole = new StepPatterns(context, rule).CanMatch();
        foreach (var (test, node, names) in rule.Tests)
        {
            isWhole &= outcomes.CanHold(test, node, names, Messages.NeverHolds);
            isWhole = isWhole && together.Add(node, test.Span);
        }

        foreach (var (state, span) in rule.Moments) isWhole = isWhole && together.Add(state, span);
        var atStart = new Contradictions(context.Bag);
        foreach (var (state, span) in rule.AtStart) isWhole = isWhole && atStart.Add(state, span);
        return isWhole;
    }

    private bool MomentsGuard(Conclusion conclusion, ConclusionDeclaration written, RuleParts rule)
    {
        if (rule.Moments.Count == 0 || ConclusionForms.HasMoment(conclusion)) return true;
        foreach (var (_, span) in rule.Moments)
            context.Bag.Add(Messages.MomentWithoutStep(span, written.Keyword, ConclusionForms.CanHaveMoment(written.Keyword), written.Span));
        return false;
    }
}
