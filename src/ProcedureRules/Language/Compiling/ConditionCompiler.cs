using ProcedureRules.Diagnostics;
using ProcedureRules.Language.Syntax;
using ProcedureRules.Packs;

namespace ProcedureRules.Language.Compiling;

/// <summary>Sorts the entries of <c>when</c> into patterns, tests, moments and states at the start.</summary>
internal sealed class ConditionCompiler(CompilerContext context, RuleParts rule)
{
    private static readonly IReadOnlyList<string> PhaseNames = [.. Enum.GetNames<Phase>().Select(name => name.ToLowerInvariant())];

    public bool Compile(Snippet snippet)
    {
        if (Parser.Condition(snippet, context.Bag) is not { } condition) return false;
        var names = new Resolver(context, rule.Scope, snippet);
        return condition switch
        {
            Condition.Changes changes => Changes(changes, names),
            Condition.Meets meets => Meets(meets, names),
            Condition.Describes describes => Describes(describes, names),
            Condition.Asks asks => Asks(asks, names),
            Condition.Holds { Expression: Expression.Call { Function.Text: "at_start" } call } => AtStart(call, names),
            Condition.Holds { Expression: Expression.Call call } when IsRelation(call) => Related(call, names),
            Condition.Holds { Expression: Expression.Is { Left: Expression.Path path } state } when IsAspect(path, names) => Moment(state, names),
            Condition.Holds holds => Test(holds.Expression, names),
            _ => false,
        };
    }

    private bool Changes(Condition.Changes condition, Resolver names)
    {
        var step = names.Step(condition.Step);
        if (names.Aspect(condition.Aspect) is not { } found || names.StateIndex(condition.State, found.Aspect) is null || step is null) return false;
        return Add(new(condition.Verb, found.Aspect.Name, condition.State.Text), step.Slot, found.Part.Slot, names);
    }

    private bool Meets(Condition.Meets condition, Resolver names)
    {
        var (step, part) = (names.Step(condition.Step), names.Part(condition.Part));
        return step is not null && part is not null && Add(new(condition.Verb), step.Slot, part.Slot, names);
    }

    private bool Describes(Condition.Describes condition, Resolver names)
    {
        var step = names.Step(condition.Step);
        var isKnown = condition.Verb switch
        {
            PredicateSort.Does => names.Operation(condition.Word) is not null,
            PredicateSort.Place => names.IsOneOf(condition.Word, "place", context.Vocabulary.Places),
            PredicateSort.Energy => names.IsOneOf(condition.Word, "energy", context.Vocabulary.Energies),
            _ => names.IsOneOf(condition.Word, "phase", PhaseNames),
        };
        return step is not null && isKnown && Add(new(condition.Verb, condition.Word.Text), step.Slot, -1, names);
    }

    private bool Asks(Condition.Asks condition, Resolver names)
    {
        if (names.Job(condition.Job) is not { } job) return false;
        // A job without a kind is on the vehicle; without 'on' the job's part is the variable of its kind.
        var due = job.On ?? context.Vocabulary.Kinds.GetValueOrDefault(Vocabulary.VehicleKind);
        if (due is null) return false;
        var name = condition.On ?? new Expression.Name(due.Name) { Offset = condition.Job.Offset, Length = condition.Job.Length };
        if (names.Part(name) is not { } part || !names.Fits(part, due, name, $"the job {Messages.Quote(job.Name)}", job.Span, narrows: true)) return false;
        return Add(new(PredicateSort.Job, job.Name), part.Slot, -1, names);
    }

    private bool AtStart(Expression.Call call, Resolver names)
    {
        if (call.Arguments.Count != 1)
        {
            names.Report(Messages.ArgumentCount(names.Span(call), "at_start", "1 argument", call.Arguments.Count));
            return false;
        }

        if (names.State(call.Arguments[0]) is not { } state) return false;
        rule.AtStart.Add((state, names.Span(call)));
        return true;
    }

    private bool IsRelation(Expression.Call call) =>
        context.Functions.Find(call.Function.Text) is null && context.Vocabulary.Relations.ContainsKey(call.Function.Text);

    private bool Related(Expression.Call call, Resolver names)
    {
        if (new CallChecker(names, new(names)).Relation(call, narrows: true) is not { } found) return false;
        rule.Reads.Matched.Add(new(found.Relation));
        rule.RelationStates.AddRange(RelationStates(found.Relation, found.First, found.Second));
        return Add(new(PredicateSort.Related, found.Relation.Name), found.First.Slot, found.Second.Slot, names);
    }

    // The states are written over a and b; here they are about the variables that stand for them.
    private IEnumerable<StateCondition> RelationStates(Relation relation, Variable first, Variable second)
    {
        var scope = TextCompiler.OfRelation(relation);
        foreach (var snippet in relation.HoldsWhile)
        {
            if (Parser.Expression(snippet, context.Bag) is not { } expression) continue;
            if (new Resolver(context, scope, snippet).State(expression) is { } state)
                yield return state with { Slot = state.Slot == 0 ? first.Slot : second.Slot };
        }
    }

    private bool IsAspect(Expression.Path path, Resolver names)
    {
        var kind = rule.Scope.Find(path.Owner.Text) is { } variable ? variable.Kind : context.Vocabulary.Kinds.GetValueOrDefault(path.Owner.Text);
        return kind is not null && names.Context.Vocabulary.FactOf(kind, path.Member.Text) is null
            && names.Context.Vocabulary.AspectOf(kind, path.Member.Text) is not null;
    }

    private bool Moment(Expression.Is condition, Resolver names)
    {
        if (names.State(condition) is not { } state) return false;
        rule.Moments.Add((state, names.Span(condition)));
        return true;
    }

    private bool Test(Expression expression, Resolver names)
    {
        if (new ExpressionChecker(names).Truth(expression) is not { } node) return false;
        rule.Add(Compiled.Test(names.Snippet.Text, names.Span(expression), node), node, names);
        return true;
    }

    private bool Add(Predicate predicate, int first, int second, Resolver names)
    {
        var pattern = new Pattern(predicate, first, second, names.Snippet.Text) { Span = names.Snippet.Span };
        rule.Patterns.Add(pattern);
        if (predicate.Sort is not (PredicateSort.Related or PredicateSort.Job)) rule.StepConditions.Add((pattern, names.Snippet.Span));
        return true;
    }
}
