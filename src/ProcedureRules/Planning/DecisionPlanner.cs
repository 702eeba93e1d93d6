using ProcedureRules.Asking;
using ProcedureRules.Beliefs;
using ProcedureRules.Choosing;
using ProcedureRules.Diagnostics;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Ordering;
using ProcedureRules.Plans;
using ProcedureRules.Validating;

namespace ProcedureRules.Planning;

/// <summary>Makes the plan of one set of choices: with the steps that find out on the way what it hangs on, or as many of them as have an order.</summary>
internal sealed class DecisionPlanner(ChoiceBook book, PlannerOptions options, Failures failures, CancellationToken cancellation)
{
    /// <summary>The plan; null where there is none, and the failures tell why.</summary>
    public Plan? Plan(Decision decision)
    {
        var questioner = new Questioner(decision.Beliefs, book);
        var checks = Checks(decision.Beliefs, questioner);
        // Where sets of choices have had no order, the next is first tried without checks: what has none without them has none with them.
        if ((failures.InVain > 0 || failures.HasProof) && checks.Count > 0 && Plan(decision, questioner, [], isLast: true).Plan is null) return null;
        while (true)
        {
            var (plan, furthest) = Plan(decision, questioner, checks, isLast: checks.Count == 0);
            if (plan is not null || checks.Count == 0) return plan;
            checks = Fewer(decision.Beliefs, checks, furthest);
        }
    }

    // What cannot be found out on the way is asked instead: first the checks that the search never came to, then the order they impose.
    private static List<CheckStep> Fewer(BeliefState beliefs, IReadOnlyList<CheckStep> checks, Moment? furthest)
    {
        if (furthest is not null)
        {
            var done = furthest.Steps().Select(work => work.Step).ToHashSet();
            var left = checks.Where(check => done.Contains(check.Step) || Requirements.IsDue(beliefs, new Atom.Occurs(check.Step))).ToList();
            if (left.Count < checks.Count) return left;
        }
        return checks.Any(check => check.Settles.Count > 0) ? [.. checks.Select(check => check with { Settles = [] })] : [];
    }

    private (Plan? Plan, Moment? Furthest) Plan(Decision decision, Questioner questioner, IReadOnlyList<CheckStep> checks, bool isLast)
    {
        var (plan, furthest) = Ordered(decision, questioner, checks, isLast);
        if (plan is null) failures.Rejected++;
        return (plan, furthest);
    }

    private (Plan? Plan, Moment? Furthest) Ordered(Decision decision, Questioner questioner, IReadOnlyList<CheckStep> checks, bool isLast)
    {
        var world = Requirements.Under(decision.Beliefs, checks);
        if (OrderRings.Find(world) is { } ring)
        {
            if (isLast) failures.HasNoOrder(decision, PlanFailure.Ring(ring), isProved: true);
            return (null, null);
        }
        if (PlanFailure.OutOfReach(world) is { Count: > 0 } missing)
        {
            if (isLast) failures.Stop(decision, missing);
            return (null, null);
        }
        // Where some steps are proved to have no order, those of other answers and ways mostly are, too. The first failure is searched, so that it
        // tells what is stuck.
        if (failures.HasProof && (!isLast || failures.Unordered is not null) && new JointReachability(world).IsOutOfReach()) return (null, null);
        var moments = MostMoments(world, isLast);
        var sequencer = new Sequencer(world, moments, options.MostRepeats, cancellation);
        var end = sequencer.Find();
        failures.HasProof |= end is null && !sequencer.GaveUp;
        IReadOnlyList<Moment> oneByOne = end is null && !sequencer.GaveUp ? [] : [.. OneByOne(decision.Beliefs, checks, sequencer.Motion, moments)];
        if (end is null && oneByOne.Count == 0)
        {
            if (isLast) failures.HasNoOrder(decision, PlanFailure.NoOrder(world, sequencer), isProved: !sequencer.GaveUp);
            return (null, sequencer.Furthest);
        }
        IReadOnlyList<Violation> violations = [];
        foreach (var draft in Drafts(decision, questioner, sequencer.Motion, end, oneByOne))
        {
            (var plan, violations) = PlanValidator.Validate(draft with { Rejected = failures.Rejected });
            for (var held = draft; plan is null && PlanningAgain.HoldAt(held, violations) is { } next; held = next)
                (plan, violations) = PlanValidator.Validate(next);
            if (plan is not null) return (plan, null);
        }

        if (isLast) failures.Reject(Messages.PlanRejected(violations.Select(violation => violation.ToString())));
        return (null, null);
    }

    // Each further set of choices is searched less long, down to twice what its steps take one after the other: what has no order in one mostly has
    // none in the next.
    private int MostMoments(World world, bool isLast)
    {
        var tried = 1 + failures.InVain;
        return Math.Min(options.MostMoments, isLast ? Math.Max(2 * world.Works.Count, options.MostMoments / (tried * tried)) : options.MostMomentsWithChecks * world.Works.Count);
    }

    // The order found, shortened; where that fails its check, as it was. Of several jobs what takes less comes first: together as found, or one by one.
    private IEnumerable<PlanDraft> Drafts(Decision decision, Questioner questioner, Motion motion, Moment? end, IReadOnlyList<Moment> oneByOne)
    {
        var shortening = new Shortening(motion);
        var drafter = new Drafter(decision, book, questioner, options);
        IEnumerable<Moment> found = end is null ? [] : [shortening.Of(end), end];
        var drafts = found.Distinct().Select(order => drafter.Draft(motion.World, order));
        return oneByOne.Count == 0 ? drafts : drafts.Concat(oneByOne.Select(order => drafter.Draft(motion.World, shortening.Of(order)))).OrderBy(draft => draft.Labour.Midpoint);
    }

    // Several jobs one after the other, each as it has an order by itself: as asked for, and the other way round. So they never take longer together
    // than apart, and have an order where each has one that the others bear.
    private IEnumerable<Moment> OneByOne(BeliefState beliefs, IReadOnlyList<CheckStep> checks, Motion motion, int moments)
    {
        var jobs = beliefs.Network.Result.Situation.Jobs;
        if (jobs.Count < 2) yield break;
        var orders = new List<IReadOnlyList<Step>>();
        foreach (var job in jobs)
        {
            var alone = beliefs.With([.. jobs.Where(other => other != job).Select(other => new Supposition.JobAsked(other, Truth.No))]);
            var due = Checks(alone, new Questioner(alone, book)).Where(check => checks.Any(asked => asked.Step.Equals(check.Step))).ToList();
            if (new Sequencer(Requirements.Under(alone, due), moments, options.MostRepeats, cancellation).Find() is not { } end) yield break;
            orders.Add([.. end.Steps().Select(work => work.Step)]);
        }

        if (JobByJob.Of(motion, orders) is { } first) yield return first;
        if (JobByJob.Of(motion, [.. orders.AsEnumerable().Reverse()]) is { } second) yield return second;
    }

    // Facts that take work to find out are found out before what they decide on.
    private static IReadOnlyList<CheckStep> Checks(BeliefState beliefs, Questioner questioner)
    {
        var steps = beliefs.Network.AtomsOf<Atom.Occurs>()
            .Where(atom => beliefs.Required(atom) >= Assurance.Provisional).Select(atom => atom.Step).OrderBy(step => step.Name, StringComparer.Ordinal).ToList();
        var found = new Dictionary<Step, List<Step>>();
        foreach (var inquiry in questioner.AskBefore(steps))
        {
            if (QuestionWriter.CheckFor(beliefs, inquiry.About) is not { } check || Stops.Binding(beliefs, check).Any()) continue;
            if (!found.TryGetValue(check, out var settles)) found[check] = settles = [];
            settles.AddRange(inquiry.Steps.Where(step => beliefs.Required(new Atom.Occurs(step)) == Assurance.Provisional && !step.Equals(check)));
        }
        return [.. found.OrderBy(entry => entry.Key.Name, StringComparer.Ordinal)
            .Select(entry => new CheckStep(entry.Key, [.. entry.Value.Distinct().OrderBy(step => step.Name, StringComparer.Ordinal)]))];
    }
}
