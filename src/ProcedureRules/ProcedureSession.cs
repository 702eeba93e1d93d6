using ProcedureRules.Beliefs;
using ProcedureRules.Choosing;
using ProcedureRules.Diagnostics;
using ProcedureRules.Explaining;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Planning;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;

namespace ProcedureRules;

/// <summary>
/// One vehicle with its jobs: state, replace or withdraw what is known of it and read the plan that follows. Changed readings go through
/// the belief network alone; only new parts, relations and states run rules again.
/// </summary>
/// <remarks>For one thread at a time. What it returns is immutable.</remarks>
public sealed class ProcedureSession
{
    private readonly InferenceSession _inference;
    private readonly SessionStatements _said;
    private (BeliefState Beliefs, PlanResult Result)? _last;

    private ProcedureSession(InferenceSession inference, Situation sheet, BeliefState beliefs)
    {
        _inference = inference;
        _said = new SessionStatements(sheet);
        Situation = sheet;
        Beliefs = beliefs;
    }

    /// <summary>What is stated now: the sheet, and what was said since.</summary>
    public Situation Situation { get; private set; }

    /// <summary>What is believed now.</summary>
    public BeliefState Beliefs { get; private set; }

    internal static ProcedureSession? Start(RuleBase rules, Situation situation, DiagnosticBag diagnostics)
    {
        var inference = new InferenceSession(rules);
        if (Infer(inference, situation, diagnostics) is not { } beliefs) return null;
        foreach (var way in situation.Ways) beliefs = beliefs.With(ChoiceReader.OfOrder(way, beliefs.Network, diagnostics));
        return diagnostics.HasErrors ? null : new ProcedureSession(inference, situation, beliefs);
    }

    /// <summary>States a fact, a relation or a part in words: <c>oil_pan.drop_available=2 in</c>. Replaces what was said of it before.</summary>
    /// <returns>The mistakes in it; an error leaves everything as it was.</returns>
    public IReadOnlyList<Diagnostic> State(string statement)
    {
        var diagnostics = new DiagnosticBag();
        _said.Say(statement, diagnostics);
        Refresh(diagnostics);
        return diagnostics.Ordered();
    }

    /// <summary>States a fact. Replaces what was said of it before, and what the sheet says at the same rank or below.</summary>
    /// <returns>A warning where the value lies outside what occurs and is not said to be sure: it is asked back and not reckoned with.</returns>
    public IReadOnlyList<Diagnostic> State(Observation observation)
    {
        ArgumentNullException.ThrowIfNull(observation);
        var diagnostics = new DiagnosticBag();
        _said.Say(observation, diagnostics);
        Refresh(diagnostics);
        return diagnostics.Ordered();
    }

    /// <summary>Takes back what was said of a fact since the sheet.</summary>
    public IReadOnlyList<Diagnostic> Withdraw(FactKey fact)
    {
        _said.TakeBack(fact);
        return Refresh();
    }

    /// <summary>Fixes a way of a choice: <c>engine.hold=jack_boss</c>, with the ids of the plan. What it costs beside the others the plan then says.</summary>
    /// <returns>The mistakes in it; an error leaves everything as it was.</returns>
    public IReadOnlyList<Diagnostic> Choose(string way)
    {
        ArgumentNullException.ThrowIfNull(way);
        var diagnostics = new DiagnosticBag();
        if (ChoiceReader.Read(way, diagnostics) is not { } fix) return diagnostics.Ordered();
        var taken = ChoiceReader.Find(fix, Beliefs.Network, diagnostics);
        if (taken.Count == 0) return diagnostics.Ordered();
        _said.Fix(fix);
        Situation = _said.Now;
        Beliefs = Beliefs.With(taken);
        return diagnostics.Ordered();
    }

    /// <summary>Leaves every choice to the planner again, those that the work order fixes too.</summary>
    public void LeaveChoices()
    {
        Beliefs = Beliefs.With([.. Fixed(Beliefs.Network).Select(taken => taken with { Option = null })]);
        _said.LeaveWays();
        Situation = _said.Now;
    }

    /// <summary>
    /// Records that a step was done: the states are now as it leaves them, readings that rest on a state it changed are old, and work that
    /// a job asks for once is not asked for again.
    /// </summary>
    public IReadOnlyList<Diagnostic> Record(PlanStep step)
    {
        _said.Finish(step.Step);
        foreach (var (_, after) in step.Changes) _said.Leave(after);
        return Refresh();
    }

    /// <summary>The plan from the states now to the end of the jobs.</summary>
    public PlanResult Plan(CancellationToken cancellation = default)
    {
        var beliefs = Beliefs;
        var result = Planner.Plan(beliefs, cancellation);
        _last = (beliefs, result);
        return result;
    }

    /// <summary>The open questions of a plan of this session, the first to ask first, with what hangs on each.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="withAnswers">Whether each answer is planned, too: that takes about as long as so many plans.</param>
    /// <param name="cancellation">Ends planning early.</param>
    public IReadOnlyList<QuestionOutlook> Outlook(Plan plan, bool withAnswers = false, CancellationToken cancellation = default)
    {
        var ranked = QuestionOutlook.Rank(plan, Beliefs);
        return withAnswers ? [.. ranked.Select(outlook => outlook.WithAnswers(plan, Beliefs, cancellation))] : ranked;
    }

    /// <summary>The work order with the ways that are fixed now, as YAML.</summary>
    /// <param name="vehicle">The path of the vehicle sheet, from where the order is to be.</param>
    public string ToOrder(string vehicle) => SheetWriter.WriteWorkOrder(Situation, string.Join("; ", Situation.Jobs.Select(job => job.Title)), vehicle);

    /// <summary>The vehicle sheet with everything that is stated now, each with its source, as YAML; reading it gives the same statements.</summary>
    /// <param name="units">The units of figures.</param>
    public string ToSheet(UnitSystem units) => SheetWriter.WriteVehicle(Situation, units);

    /// <summary>What the jobs save by being done together as a plan of this session has them.</summary>
    /// <param name="plan">The plan for all of them.</param>
    /// <param name="cancellation">Ends planning early.</param>
    /// <returns>The saving; null where there is one job, where one of them has no plan by itself, or where the plan for all stops.</returns>
    public JobSharing? Sharing(Plan plan, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (Situation.Jobs.Count < 2) return null;
        return JobSharing.Of(plan, Situation.Jobs.Select(job => (job, Alone(job))));

        Plan? Alone(JobRequest job) =>
            Infer(new InferenceSession(Beliefs.Network.Result.Rules), Situation with { Jobs = [job] }, new DiagnosticBag()) is { } beliefs
                ? Planner.Plan(beliefs.With(Fixed(beliefs.Network)), cancellation).Plan
                : null;
    }

    /// <summary>What would change if some things were otherwise, said as to <see cref="State(string)"/>. Changes nothing in the session.</summary>
    /// <param name="statements">What is supposed, all of it together.</param>
    /// <param name="cancellation">Ends planning early.</param>
    public WhatIf Suppose(IEnumerable<string> statements, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(statements);
        var (said, diagnostics) = (_said.Fork(), new DiagnosticBag());
        foreach (var statement in statements) said.Say(statement, diagnostics);
        var supposed = diagnostics.HasErrors ? null : Believe(said.Now, () => new InferenceSession(Beliefs.Network.Result.Rules), diagnostics);
        if (supposed is null) return new WhatIf(null, null, diagnostics.Ordered());
        // The same beliefs give the same plan.
        var before = _last is { } last && ReferenceEquals(last.Beliefs, Beliefs) ? last.Result : Plan(cancellation);
        var after = Planner.Plan(supposed, cancellation);
        return new WhatIf(before.Plan is { } old && after.Plan is { } now ? PlanDifference.Between(old, now) : null, after, diagnostics.Ordered());
    }

    private static BeliefState? Infer(InferenceSession inference, Situation situation, DiagnosticBag diagnostics)
    {
        var result = inference.Update(situation);
        diagnostics.AddRange(result.Diagnostics);
        return result.IsSettled ? BeliefNetwork.Build(result, diagnostics)?.Initial : null;
    }

    private IReadOnlyList<Diagnostic> Refresh()
    {
        var diagnostics = new DiagnosticBag();
        Refresh(diagnostics);
        return diagnostics.Ordered();
    }

    private void Refresh(DiagnosticBag diagnostics)
    {
        var next = _said.Now;
        if (ReferenceEquals(next, Situation) || Believe(next, () => _inference, diagnostics) is not { } beliefs) return;
        Beliefs = beliefs;
        Situation = next;
    }

    // Readings go through the network alone; what it was not built for takes the rules.
    private BeliefState? Believe(Situation next, Func<InferenceSession> inference, DiagnosticBag diagnostics) =>
        SituationChanges.Between(Situation, next) is { } changes && changes.All(Beliefs.Network.Covers)
            ? Beliefs.With(changes)
            : Infer(inference(), next, diagnostics) is { } beliefs ? beliefs.With(Fixed(beliefs.Network)) : null;

    // In another network a choice that no longer comes up is not missed.
    private List<Supposition.Takes> Fixed(BeliefNetwork network) => [.. Situation.Ways.SelectMany(way => ChoiceReader.Find(way, network, new DiagnosticBag()))];
}
