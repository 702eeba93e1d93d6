using NRules;
using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Language;

namespace ProcedureRules.Inference;

/// <summary>
/// Infers what can be concluded of one vehicle, and keeps it in step as statements come and go. Readings are not its matter: an update that
/// changes nothing else returns the same records at once.
/// </summary>
/// <remarks>One thread at a time; sessions of the same rule base may run side by side. It holds no resources but memory.</remarks>
public sealed class InferenceSession
{
    /// <summary>The bound on records where the caller sets none: far beyond what packs for one vehicle conclude.</summary>
    public const int DefaultBudget = 250_000;

    private const int BusiestNamed = 3;

    private readonly RuleIndex _index;
    private readonly Dictionary<Atom, Support> _inputs = [];
    private ISession? _session;
    private Workspace _workspace;
    private InferenceResult? _result;
    private int _sweeps;

    /// <summary>Makes a session; nothing is inferred yet.</summary>
    /// <param name="rules">The rules; the work of indexing them is done once and shared.</param>
    public InferenceSession(RuleBase rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        _index = RuleIndex.Of(rules);
        _workspace = new Workspace(_index);
    }

    /// <summary>Infers a situation from scratch, whatever was inferred before.</summary>
    /// <param name="situation">What is stated.</param>
    /// <param name="budget">The bound on records; beyond it the result has a diagnostic that names the busiest rules.</param>
    /// <param name="cancellationToken">Stops the work.</param>
    /// <exception cref="OperationCanceledException">The work was stopped; the session can be used again.</exception>
    public InferenceResult Infer(Situation situation, int budget = DefaultBudget, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(situation);
        Reset();
        return Update(situation, budget, cancellationToken);
    }

    /// <summary>Goes on to another situation of the same vehicle: only what is stated differently is inserted and retracted.</summary>
    /// <param name="next">What is stated now.</param>
    /// <param name="budget">The bound on records; beyond it the result has a diagnostic that names the busiest rules.</param>
    /// <param name="cancellationToken">Stops the work.</param>
    /// <exception cref="OperationCanceledException">The work was stopped; the session can be used again.</exception>
    public InferenceResult Update(Situation next, int budget = DefaultBudget, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(next);
        cancellationToken.ThrowIfCancellationRequested();
        if (_result is not null && SituationInputs.AreSame(_result.Situation, next)) return Finish(next, _result.Records);
        try
        {
            var hasChanged = Restate(next, budget, cancellationToken);
            return Finish(next, hasChanged || _result is null ? _workspace.Fired.Records() : _result.Records);
        }
        catch (BudgetExceededException)
        {
            var busiest = _workspace.Workload.Busiest(BusiestNamed).ToList();
            Reset();
            return new InferenceResult
            {
                Situation = next,
                Rules = _index.Rules,
                Records = [],
                Diagnostics = [Messages.NotSettled(budget, busiest)],
            };
        }
        catch
        {
            // Whatever stopped the engine may have left a fact half inserted.
            Reset();
            throw;
        }
    }

    private bool Restate(Situation next, int budget, CancellationToken cancellation)
    {
        _workspace.Workload.Begin(budget, cancellation);
        _workspace.HasWeakened = false;
        _session ??= SessionNetwork.CreateSession(_workspace);
        var stated = new HashSet<Atom>();
        var added = new List<Support>();
        foreach (var atom in SituationInputs.Of(next))
        {
            if (!stated.Add(atom) || _inputs.ContainsKey(atom)) continue;
            var support = new Support(_workspace.Nodes.Intern(atom));
            _inputs.Add(support.Node.Atom, support);
            added.Add(support);
        }
        var removed = _inputs.Where(input => !stated.Contains(input.Key)).Select(input => input.Value).ToList();
        if (added.Count == 0 && removed.Count == 0) return false;
        // What is new comes first, so that what only changes its reason does not fall in between.
        if (added.Count > 0) _session.InsertAll(added);
        if (removed.Count > 0) _session.RetractAll(removed);
        foreach (var support in removed) _inputs.Remove(support.Node.Atom);
        Settle(_session, cancellation);
        if (_workspace.HasWeakened) Sweep(_session, cancellation);
        _workspace.Nodes.Purge();
        return true;
    }

    /// <summary>Fires wave after wave until nothing moves.</summary>
    private static void Settle(ISession session, CancellationToken cancellation)
    {
        int moved;
        do
        {
            cancellation.ThrowIfCancellationRequested();
            moved = session.Fire(cancellation);
            foreach (var set in session.PropagateLinked()) moved += set.FactCount;
        }
        while (moved > 0 || !session.Agenda.IsEmpty);
    }

    private void Sweep(ISession session, CancellationToken cancellation)
    {
        var unreached = RingSweep.Unreached(_workspace.Nodes, _inputs.Values.Select(input => input.Node), ++_sweeps);
        if (unreached.Count == 0) return;
        var withdrawal = new Withdrawal(unreached);
        session.Insert(withdrawal);
        Settle(session, cancellation);
        session.Retract(withdrawal);
    }

    private InferenceResult Finish(Situation situation, IReadOnlyList<Record> records) =>
        _result = new InferenceResult { Situation = situation, Rules = _index.Rules, Records = records };

    private void Reset()
    {
        _session = null;
        _result = null;
        _inputs.Clear();
        _workspace = new Workspace(_index);
    }
}
