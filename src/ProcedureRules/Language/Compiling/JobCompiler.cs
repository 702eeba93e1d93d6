using ProcedureRules.Language.Syntax;
using ProcedureRules.Packs;

namespace ProcedureRules.Language.Compiling;

/// <summary>Compiles what a job asks for to rules that rest on its being asked for.</summary>
internal sealed class JobCompiler(CompilerContext context)
{
    public IEnumerable<CompiledRule> Compile(JobDefinition job)
    {
        if (KindOf(job, context.Vocabulary) is not { } kind) return [];
        var main = Asked(job, kind, $"job {job.Name}");
        var rules = new PartRules(context, main, job.Pack, null, "");
        foreach (var end in job.Ends) End(rules, end);
        if (job.Waypoints.Count > 0) rules.Add("pass", (_, conclusions) => Waypoints(job, conclusions), job.Span);
        foreach (var work in job.Work) Do(rules, work);
        foreach (var know in job.Know) Know(rules, know);
        return rules.Build().Concat(job.Variants.SelectMany((variant, i) => Compile(job, kind, variant, i + 1))).ToList();
    }

    /// <summary>The kind of the job's part; the vehicle where it names none.</summary>
    public static Kind? KindOf(JobDefinition job, Vocabulary vocabulary) => job.On ?? vocabulary.Kinds.GetValueOrDefault(Vocabulary.VehicleKind);

    private IEnumerable<CompiledRule> Compile(JobDefinition job, Kind kind, JobVariant variant, int number)
    {
        var main = Asked(job, kind, $"job {job.Name}, variant {number}");
        if (!new ConditionCompiler(context, main).Compile(variant.If) || !new AuthoredRules(context).CanFire(main)) return [];
        var rules = new PartRules(context, main, job.Pack, null, "");
        foreach (var end in variant.Ends) End(rules, end);
        foreach (var work in variant.Work) Do(rules, work);
        return rules.Build();
    }

    private static RuleParts Asked(JobDefinition job, Kind kind, string name)
    {
        var scope = new RuleScope(job.Pack);
        scope.Add("it", Sort.Part, kind);
        var main = new RuleParts(name, scope, job.Span);
        main.Patterns.Add(new(new(PredicateSort.Job, job.Name), 0, -1, $"job {job.Name}"));
        return main;
    }

    private static void End(PartRules rules, Snippet end) => rules.Add(
        $"end {end.Text}",
        (_, conclusions) => conclusions.StateOf(end) is { } state ? new Conclusion.Need(-1, state) { IfUnknown = IfUnknown.Hold } : null,
        end.Span);

    private static void Do(PartRules rules, Snippet work) => rules.Add(
        $"do {work.Text}",
        (_, conclusions) => conclusions.Work(work) is { } found
            ? new Conclusion.Do(found.Operation, found.Slot, -1, -1) { IfUnknown = IfUnknown.Hold }
            : null,
        work.Span);

    private void Know(PartRules rules, Snippet know) => rules.Add(
        $"know {know.Text}",
        (parts, _) => Parser.Path(know, context.Bag) is { } path && new Resolver(context, parts.Scope, know).Fact(path) is { } found
            ? new Conclusion.Know(found.Part.Slot, found.Fact) { IfUnknown = IfUnknown.Do }
            : null,
        know.Span);

    private static Conclusion.Waypoints? Waypoints(JobDefinition job, ConclusionCompiler conclusions)
    {
        var states = job.Waypoints.Select(conclusions.StateOf).ToList();
        return states.Contains(null) ? null : new(states!) { IfUnknown = IfUnknown.Hold };
    }
}
