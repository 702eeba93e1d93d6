using ProcedureRules.Beliefs;
using ProcedureRules.Diagnostics;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Packs;

namespace ProcedureRules.Testing.Laws;

/// <summary>The laws that hold for every pack, whatever it is about.</summary>
internal static class CommonLaws
{
    /// <summary>Those that a plan breaks.</summary>
    public static IEnumerable<BrokenLaw> Broken(PlanCourse course) => [.. WhatComesOffGoesBack(course), .. CautionsReachThePlan(course), .. ProofsComeBehindTheWork(course)];

    // Unless a job or a rule wants it otherwise at the end, or the plan says that it cannot go on.
    private static IEnumerable<BrokenLaw> WhatComesOffGoesBack(PlanCourse course)
    {
        if (course.Plan.IsStopped) yield break;
        var wanted = course.Plan.Beliefs.Network.Records.SelectMany(record => record.Effects)
            .Where(effect => effect.Conclusion is Conclusion.Need { Step: < 0 }).Select(effect => effect.Atom).OfType<Atom.Wanted>().ToList();
        foreach (var (part, aspect) in course.Touched.Where(touched => !touched.Aspect.IsMark))
        {
            var state = course.State(course.End, part, aspect);
            if (state != aspect.Normal && !wanted.Exists(end => end.Part == part && end.Aspect == aspect && end.States.Has(state)))
                yield return new BrokenLaw("what comes off goes back", SourceSpan.None, $"{part.Name}.{aspect.Name} stays {aspect.States[state]}");
        }
    }

    private static IEnumerable<BrokenLaw> CautionsReachThePlan(PlanCourse course)
    {
        var plan = course.Plan;
        var shown = plan.Cautions.Concat(plan.Steps.SelectMany(step => step.Cautions)).Select(caution => caution.Reason.Record).ToHashSet();
        foreach (var record in plan.Beliefs.Network.Records.Where(record => record.Moments.Count == 0 && !shown.Contains(record)))
        {
            for (var effect = 0; effect < record.Effects.Count; effect++)
            {
                if (record.Effects[effect].Conclusion is not Conclusion.Caution caution || plan.Beliefs.Required(record, effect) <= Assurance.Held) continue;
                if (caution.Step >= 0 && plan.Steps.All(step => step.Step != record.Binding.Step(caution.Step))) continue;
                var words = caution.Text.Render(plan.Beliefs, record.Binding, Quantities.UnitSystem.Us);
                if (!plan.Cautions.Concat(plan.Steps.SelectMany(step => step.Cautions)).Any(said => said.Text.ToString() == words))
                    yield return new BrokenLaw("each caution reaches the plan", record.Rule?.Span ?? SourceSpan.None, $"'{words}' is lost");
            }
        }
    }

    // Of several jobs one may be proved before the next is begun.
    private static IEnumerable<BrokenLaw> ProofsComeBehindTheWork(PlanCourse course)
    {
        var plan = course.Plan;
        if (plan.Situation.Jobs.Count != 1 || plan.Steps.LastOrDefault(step => step.Phase == Phase.Work) is not { } work) yield break;
        foreach (var proof in plan.Steps.Where(step => step.Phase == Phase.Prove).GroupBy(step => step.Step).Select(times => times.Last()))
            if (proof.Number < work.Number) yield return new BrokenLaw("what is proved is proved behind the work", SourceSpan.None, $"{proof.Id} stands before {work.Id}");
    }
}
