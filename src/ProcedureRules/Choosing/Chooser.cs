using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Logic;
using ProcedureRules.Plans;

namespace ProcedureRules.Choosing;

/// <summary>
/// Decides what is open, by branch and bound: complete sets of choices come lazily, the best first (see <see cref="DecisionKey"/>). What only a
/// moment of the plan would ask for is decided last, each by itself, and never at the cost of what has to be done.
/// </summary>
internal sealed class Chooser(ChoiceBook book, PlannerOptions options, CancellationToken cancellation)
{
    private readonly ChoiceBounds _bounds = new(book);
    private readonly List<Decision> _faulty = [];
    private readonly bool[] _isFixed = new bool[book.Keys.Count];
    private PriorityQueue<ChoiceNode, ChoiceTurn> _queue = new(ChoiceTurn.BestFirst);
    private BeliefState? _root;
    private DecisionKey? _bound;
    private int _spent;
    private int _turns;

    /// <summary>Complete sets of choices, the best first; behind them those that cannot be used, with their faults.</summary>
    public IEnumerable<Decision> From(BeliefState beliefs)
    {
        _root = beliefs;
        var ways = new int[book.Keys.Count];
        for (var i = 0; i < ways.Length; i++)
        {
            ways[i] = beliefs.Taken(book.Keys[i]) ?? ChoiceNode.Open;
            _isFixed[i] = ways[i] != ChoiceNode.Open;
        }

        Enqueue(_bounds.Node(beliefs, ways, new ChoiceGain?[ways.Length]));
        return Search().Concat(_faulty.OrderBy(decision => decision.Key));
    }

    private IEnumerable<Decision> Search()
    {
        var hurried = new List<Decision>();
        while (_queue.TryDequeue(out var node, out _))
        {
            cancellation.ThrowIfCancellationRequested();
            if (_bound is null && _spent >= options.MostHypotheses) Hurry(node);
            if (_bound is not null && IsOver(hurried.Count)) break;
            if (_bound is null && LookAhead(node) is { } ahead)
            {
                Enqueue(ahead);
                continue;
            }
            if (Next(node) is { } choice)
            {
                Branch(node, choice);
                continue;
            }
            if (Finish(node) is not { } decision) continue;
            if (decision.Faults.Count > 0) _faulty.Add(decision);
            else if (_bound is null) yield return decision;
            else hurried.Add(decision);
        }

        foreach (var decision in hurried.OrderBy(decision => decision.Key)) yield return decision;
    }

    // From here on the deepest goes first: some complete sets, and what none can come below.
    private void Hurry(ChoiceNode best)
    {
        _bound = best.Bound;
        var rest = _queue.UnorderedItems.Select(entry => (entry.Element, entry.Priority)).ToList();
        _queue = new PriorityQueue<ChoiceNode, ChoiceTurn>(rest, ChoiceTurn.DeepestFirst);
    }

    private bool IsOver(int found) => _spent >= options.MostHypotheses + (found > 0 ? options.MostHypotheses / 4 : 3 * options.MostHypotheses);

    // The node with what the ways of choices that have to be made would make sure; null where all of them have been looked at.
    private ChoiceNode? LookAhead(ChoiceNode node)
    {
        ChoiceGain?[]? gains = null;
        (long, long)[]? sure = null;
        for (var i = 0; i < book.Keys.Count; i++)
        {
            if (node.Ways[i] != ChoiceNode.Open || node.Gains[i] is not null || !_bounds.HasToBeMade(node, i)) continue;
            gains ??= [.. node.Gains];
            sure ??= book.Labour.Sure(node.Beliefs, node.Unsettled);
            var ways = new List<(int, IReadOnlyList<(int, long, long)>)>();
            foreach (var option in _bounds.MayBeGone(node, i))
                if (Taken(node, i, option.Index) is { } child)
                    ways.Add((option.Index, ChoiceGain.Between(sure, book.Labour.Sure(child.Beliefs, child.Unsettled))));
            gains[i] = new ChoiceGain(ways);
        }

        return gains is null ? null : _bounds.WithBound(node with { Gains = gains });
    }

    // What has to be made comes first, the one with the fewest ways; then what may have to be; then what only a moment may ask for.
    private int? Next(ChoiceNode node)
    {
        var (best, bestTurn) = ((int?)null, (int.MaxValue, int.MaxValue));
        for (var i = 0; i < book.Keys.Count; i++)
        {
            if (node.Ways[i] != ChoiceNode.Open) continue;
            var open = new Atom.Open(book.Keys[i]);
            if (node.Beliefs.Available(open) < Assurance.Provisional) continue;
            var turn = _bounds.HasToBeMade(node, i) ? (0, _bounds.MayBeGone(node, i).Count())
                : node.Beliefs.Required(open) >= Assurance.Provisional ? (1, 0)
                : (2, 0);
            if (turn.CompareTo(bestTurn) < 0) (best, bestTurn) = (i, turn);
        }

        return best;
    }

    private void Branch(ChoiceNode node, int choice)
    {
        var key = book.Keys[choice];
        var binding = (key as ChoiceKey.OfRule)?.Binding;
        var hasToBeMade = _bounds.HasToBeMade(node, choice);
        var children = _bounds.MayBeGone(node, choice).Select(option => (Option: option, Node: Taken(node, choice, option.Index))).Where(child => child.Node is not null);
        if (!hasToBeMade)
            children = children.OrderBy(child => child.Option.Rank).ThenBy(child => book.Labour.Of(child.Node!.Beliefs).Drawn);
        foreach (var child in children.ToList()) Enqueue(child.Node!);

        // A choice that need not be made may stay open; one without any open way waits for an answer.
        if (!hasToBeMade || book.Options(key).All(option => option.IsOpen(node.Beliefs, binding) != Truth.Yes))
            Enqueue(_bounds.Node(node.Beliefs, node.With(choice, ChoiceNode.None), node.Gains));
    }

    // The node with a way taken; null where something stands against it that no further choice takes away.
    private ChoiceNode? Taken(ChoiceNode node, int choice, int way)
    {
        _spent++;
        var child = _bounds.Node(node.Beliefs.With([new Supposition.Takes(book.Keys[choice], way)]), node.With(choice, way), node.Gains);
        var faults = Faults.Of(child.Beliefs, child.Unsettled);
        if (faults.Count == 0) return child;
        _faulty.Add(Decide(child, faults));
        return null;
    }

    // A complete set of choices; null where a way taken turned out not to be open, or a choice left open to have an open way.
    private Decision? Finish(ChoiceNode node)
    {
        var faults = new List<Fault>();
        for (var i = 0; i < book.Keys.Count; i++)
        {
            var (key, way) = (book.Keys[i], node.Ways[i]);
            var binding = (key as ChoiceKey.OfRule)?.Binding;
            var open = new Atom.Open(key);
            var level = node.Beliefs.Required(open);
            if (way == ChoiceNode.Open) continue;
            if (_isFixed[i])
            {
                if (level >= Assurance.Provisional && book.Options(key)[way].IsOpen(node.Beliefs, binding) == Truth.No)
                    faults.Add(new Fault(new Wording($"the way fixed is not open for {Words.Choice(key)}"), level >= Assurance.Protective, node.Beliefs.Network.RecordsSupporting(open)[0].Record, open));
                continue;
            }
            if (way != ChoiceNode.None)
            {
                if (node.Beliefs.Available(open) < Assurance.Provisional || book.Options(key)[way].IsOpen(node.Beliefs, binding) != Truth.Yes) return null;
                continue;
            }
            if (level < Assurance.Provisional) continue;
            var truths = book.Options(key).Select(option => option.IsOpen(node.Beliefs, binding)).ToList();
            if (truths.Contains(Truth.Yes)) return null;
            if (truths.TrueForAll(truth => truth == Truth.No))
                faults.Add(new Fault(new Wording($"no way is left for {Words.Choice(key)}"), level >= Assurance.Protective, node.Beliefs.Network.RecordsSupporting(open)[0].Record, open));
        }

        return Decide(node, [.. Faults.Of(node.Beliefs), .. faults]);
    }

    private Decision Decide(ChoiceNode node, IReadOnlyList<Fault> faults)
    {
        var live = Enumerable.Range(0, book.Keys.Count).Where(i => node.Beliefs.Available(new Atom.Open(book.Keys[i])) >= Assurance.Provisional).ToList();
        return new Decision(
            node.Beliefs,
            [.. live.Where(i => node.Ways[i] >= 0).Select(i => (book.Keys[i], node.Ways[i]))],
            [.. live.Where(i => node.Ways[i] == ChoiceNode.None).Select(i => book.Keys[i])],
            node.Bound,
            book.Labour.Of(node.Beliefs),
            faults,
            _root!,
            _bound is { } bound ? bound.Twice / 2000.0 : null);
    }

    private void Enqueue(ChoiceNode node) => _queue.Enqueue(node, new ChoiceTurn(node.Bound, node.Depth, _turns++));
}
