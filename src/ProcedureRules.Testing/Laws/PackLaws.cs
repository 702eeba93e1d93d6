using ProcedureRules.Language;
using ProcedureRules.Plans;

namespace ProcedureRules.Testing.Laws;

/// <summary>Holds plans to laws: those that packs write under <c>laws</c>, and those that hold for every pack.</summary>
public static class PackLaws
{
    /// <summary>The laws that a plan breaks.</summary>
    /// <param name="engine">The packs.</param>
    /// <param name="plan">A plan of theirs.</param>
    public static IReadOnlyList<BrokenLaw> Broken(ProcedureEngine engine, Plan plan)
    {
        ArgumentNullException.ThrowIfNull(engine);
        ArgumentNullException.ThrowIfNull(plan);
        var course = new PlanCourse(plan);
        return [.. CommonLaws.Broken(course), .. engine.Rules.Laws.SelectMany(law => Broken(course, law))];
    }

    /// <summary>How often each law had something to say of a plan: one that never has is proved by no plan.</summary>
    /// <param name="engine">The packs.</param>
    /// <param name="plan">A plan of theirs.</param>
    public static IEnumerable<string> Applied(ProcedureEngine engine, Plan plan)
    {
        ArgumentNullException.ThrowIfNull(engine);
        ArgumentNullException.ThrowIfNull(plan);
        var course = new PlanCourse(plan);
        return engine.Rules.Laws.Where(law => new LawBindings(course, law).All().Any()).Select(law => law.Title).Distinct();
    }

    private static IEnumerable<BrokenLaw> Broken(PlanCourse course, CompiledRule law) =>
        from binding in new LawBindings(course, law).All()
        from conclusion in law.Conclusions
        let wrong = LawJudge.Wrong(course, conclusion, binding)
        where wrong is not null
        select new BrokenLaw(law.Title, law.Span, wrong);
}
