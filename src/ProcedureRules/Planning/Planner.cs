using ProcedureRules.Asking;
using ProcedureRules.Beliefs;
using ProcedureRules.Choosing;
using ProcedureRules.Diagnostics;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Ordering;
using ProcedureRules.Plans;
using ProcedureRules.Validating;

namespace ProcedureRules.Planning;

/// <summary>Plans a job: chooses between the ways, puts the steps in order, attaches what belongs to them, and has the plan validated.</summary>
/// <remarks>Holds no state; safe on many threads.</remarks>
public static class Planner
{
    /// <summary>Plans under some beliefs, within the usual bounds.</summary>
    /// <param name="beliefs">What is believed; choices taken in it stay taken.</param>
    /// <param name="cancellation">Ends planning early.</param>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public static PlanResult Plan(BeliefState beliefs, CancellationToken cancellation = default) => Plan(beliefs, PlannerOptions.Default, cancellation);

    /// <summary>Plans under some beliefs.</summary>
    /// <param name="beliefs">What is believed; choices taken in it stay taken.</param>
    /// <param name="options">Bounds.</param>
    /// <param name="cancellation">Ends planning early.</param>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public static PlanResult Plan(BeliefState beliefs, PlannerOptions options, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(beliefs);
        ArgumentNullException.ThrowIfNull(options);
        var book = new ChoiceBook(beliefs.Network);
        var attempt = new Attempt(book, options, cancellation);
        if (attempt.Plan(beliefs) is { } plan) return new PlanResult(plan, []);
        // Where all that is in the way is only possible, the plan holds before it and tells the rest.
        if (attempt.MayGoOn && new Attempt(book, options, cancellation).Plan(beliefs.Tentatively(true)) is { } tentative) return new PlanResult(tentative, []);
        return attempt.Fail();
    }

    // How many questions are tried, and how long a search each of their answers may take, where no order fits all answers.
    private const int MostDivided = 12;
    private const int MostMomentsDivided = 2000;

    private sealed class Attempt(ChoiceBook book, PlannerOptions options, CancellationToken cancellation)
    {
        private readonly List<Diagnostic> _diagnostics = [];
        private readonly List<(Decision Decision, IReadOnlyList<Fault> Faults)> _stopped = [];
        private Decision? _unordered;

        /// <summary>Whether a set of choices was found against which nothing sure stands.</summary>
        public bool MayGoOn => _stopped.Any(stopped => stopped.Faults.All(fault => !fault.IsSure));

        public Plan? Plan(BeliefState beliefs)
        {
            var tried = 0;
            foreach (var decision in new Chooser(book, options, cancellation).From(beliefs).Take(options.MostHypotheses))
            {
                if (decision.Faults.Count > 0)
                {
                    _stopped.Add((decision, decision.Faults));
                    continue;
                }
                if (Plan(decision) is { } plan) return plan;
                if (++tried >= options.MostDecisions) break;
            }

            return null;
        }

        /// <summary>What came of it where there is no plan: why the job stops, or what is wrong.</summary>
        public PlanResult Fail()
        {
            if (_unordered is { } decision && Divided(decision) is { } divided) return Stopped(decision, [divided]);
            // Ways that could not be put in order say more of what is wrong than ways that are forbidden.
            if (_diagnostics.Count > 0) return new PlanResult(null, [.. _diagnostics.Take(1)]);
            if (_stopped.Count == 0) return new PlanResult(null, [Messages.NoDecision()]);
            return Stopped(_stopped[0].Decision, WhatStops());
        }

        private PlanResult Stopped(Decision decision, IReadOnlyList<Fault> faults) =>
            new(PlanValidator.Validate(new Drafter(decision, book, new Questioner(decision.Beliefs, book), options).Stopped(faults)).Plan, []);

        // Steps that one answer brings may be in the way of those that another brings: there is no order for both, and one for each. That is
        // then asked before anything is done.
        private Fault? Divided(Decision decision)
        {
            var due = decision.Beliefs.Network.AtomsOf<Atom.Occurs>().Where(atom => decision.Beliefs.Required(atom) >= Assurance.Provisional).Select(atom => atom.Step).ToList();
            var quick = options with { MostDecisions = 1, MostMoments = Math.Min(options.MostMoments, MostMomentsDivided) };
            Fault? ofSome = null;
            foreach (var inquiry in new Questioner(decision.Beliefs, book).AskBefore(due).Take(MostDivided))
            {
                if (decision.Beliefs.Network.Readers(inquiry.About) is not [var reader, ..]) continue;
                var plans = Outcomes.Of(decision.Root, inquiry.About).ToLookup(outcome => new Attempt(book, quick, cancellation).Plan(decision.Root.With([outcome])) is not null);
                if (!plans.Contains(true)) continue;
                var question = QuestionWriter.Write(decision.Beliefs, inquiry, []).Text;
                var fault = new Fault(new Wording(units => $"No order of the steps fits every answer to this question: {question.In(units)} Find it out first, then plan again."), false, reader);
                if (!plans.Contains(false)) return fault;
                ofSome ??= fault;
            }

            return ofSome;
        }

        // What stands against every way is what stops the job; where each way has its own reason, all of them are told.
        private List<Fault> WhatStops()
        {
            var all = _stopped.SelectMany(stopped => stopped.Faults).DistinctBy(Subject).ToList();
            var common = all.Where(fault => _stopped.TrueForAll(stopped => stopped.Faults.Any(other => Subject(other).Equals(Subject(fault))))).ToList();
            return common.Count > 0 ? common : all;

            static object Subject(Fault fault) => fault.Atom is { } atom ? (fault.Record, atom) : fault.Text.ToString();
        }

        private Plan? Plan(Decision decision)
        {
            var questioner = new Questioner(decision.Beliefs, book);
            var checks = Checks(decision.Beliefs, questioner);
            while (true)
            {
                var (plan, furthest) = Plan(decision, questioner, checks, isLast: checks.Count == 0);
                if (plan is not null || checks.Count == 0) return plan;
                checks = Fewer(decision.Beliefs, checks, furthest);
            }
        }

        private void Fail(Decision decision, Diagnostic diagnostic)
        {
            _diagnostics.Add(diagnostic);
            _unordered ??= decision;
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
            var world = Requirements.Under(decision.Beliefs, checks);
            if (OrderRings.Find(world) is { } ring)
            {
                if (isLast) Fail(decision, PlanFailure.Ring(ring));
                return (null, null);
            }
            if (PlanFailure.OutOfReach(world) is { Count: > 0 } missing)
            {
                if (isLast) _stopped.Add((decision, missing));
                return (null, null);
            }
            // Each further set of choices is searched less long: what has no order in one mostly has none in the next.
            var moments = isLast ? options.MostMoments / (1 + _diagnostics.Count) : Math.Min(options.MostMoments, options.MostMomentsWithChecks * world.Works.Count);
            var sequencer = new Sequencer(world, moments, options.MostRepeats, cancellation);
            if (sequencer.Find() is not { } end)
            {
                if (isLast) Fail(decision, PlanFailure.NoOrder(world, sequencer));
                return (null, sequencer.Furthest);
            }
            IReadOnlyList<Violation> violations = [];
            foreach (var order in new[] { new Shortening(sequencer.Motion).Of(end), end }.Distinct())
            {
                var draft = new Drafter(decision, book, questioner, options).Draft(world, order);
                (var plan, violations) = PlanValidator.Validate(draft);
                for (var held = draft; plan is null && PlanningAgain.HoldAt(held, violations) is { } next; held = next)
                    (plan, violations) = PlanValidator.Validate(next);
                if (plan is not null) return (plan, null);
            }

            if (isLast) _diagnostics.Add(Messages.PlanRejected(violations.Select(violation => violation.ToString())));
            return (null, null);
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
}
