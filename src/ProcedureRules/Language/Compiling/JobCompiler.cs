using ProcedureRules.Packs;

namespace ProcedureRules.Language.Compiling;

/// <summary>Compiles what a job asks for to rules that rest on its being asked for.</summary>
internal sealed class JobCompiler(CompilerContext context)
{
    public IEnumerable<CompiledRule> Compile(JobDefinition job)
    {
        if (KindOf(job, context.Vocabulary) is not { } kind) return [];
        var rules = new RuleGroup(context, Asked(job, kind, $"job {job.Name}"));
        AddEnds(rules, job.Ends);
        if (job.Waypoints.Count > 0) rules.Add(terms => Waypoints(job, terms));
        AddWork(rules, job.Work);
        foreach (var know in job.Know)
            rules.Add(terms => terms.Fact(know) is { } found ? new Conclusion.Know(found.Slot, found.Fact) { IfUnknown = IfUnknown.Do, Span = know.Span } : null);
        return rules.Build(job.Pack, null, "").Concat(job.Variants.SelectMany((variant, i) => Compile(job, kind, variant, i + 1)));
    }

    /// <summary>The kind of the job's part; the vehicle where it names none.</summary>
    public static Kind? KindOf(JobDefinition job, Vocabulary vocabulary) => job.On ?? vocabulary.Kinds.GetValueOrDefault(Vocabulary.VehicleKind);

    private IEnumerable<CompiledRule> Compile(JobDefinition job, Kind kind, JobVariant variant, int number)
    {
        var main = Asked(job, kind, $"job {job.Name}, variant {number}");
        if (!new ConditionCompiler(context, main).Compile(variant.If) || !new AuthoredRules(context).CanFire(main)) return [];
        var rules = new RuleGroup(context, main);
        AddEnds(rules, variant.Ends);
        AddWork(rules, variant.Work);
        return rules.Build(job.Pack, null, "");
    }

    private static RuleParts Asked(JobDefinition job, Kind kind, string name)
    {
        var scope = new RuleScope(job.Pack);
        scope.Add("it", Sort.Part, kind);
        var main = new RuleParts(name, scope, job.Span);
        main.Patterns.Add(new(new(PredicateSort.Job, job.Name), 0, -1, $"job {job.Name}"));
        return main;
    }

    private static void AddEnds(RuleGroup rules, IReadOnlyList<Snippet> ends)
    {
        foreach (var end in ends)
            rules.Add(terms => terms.State(end) is { } state ? new Conclusion.Need(-1, state) { IfUnknown = IfUnknown.Hold, Span = end.Span } : null);
    }

    private static void AddWork(RuleGroup rules, IReadOnlyList<Snippet> work)
    {
        foreach (var one in work)
            rules.Add(terms => terms.Work(one) is { } found ? new Conclusion.Do(found.Operation, found.Slot, -1, -1) { IfUnknown = IfUnknown.Hold, Span = one.Span } : null);
    }

    private static Conclusion.Waypoints? Waypoints(JobDefinition job, Terms terms)
    {
        var states = job.Waypoints.Select(terms.State).ToList();
        return states.Contains(null) ? null : new(states!) { IfUnknown = IfUnknown.Hold, Span = job.Waypoints[0].Span };
    }
}
