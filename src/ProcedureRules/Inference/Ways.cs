using ProcedureRules.Packs;

namespace ProcedureRules.Inference;

/// <summary>The operations that lead a part's aspect into a wanted state.</summary>
internal sealed class Ways(Vocabulary vocabulary)
{
    private readonly Dictionary<(Kind, Aspect, StateSet), IReadOnlyList<Operation>> _known = [];

    /// <summary>
    /// In vocabulary order: those that can start from the state now, else all; operations that undo another only where nothing else leads there.
    /// </summary>
    public IReadOnlyList<Operation> To(Kind kind, Aspect aspect, StateSet states, int now)
    {
        if (!_known.TryGetValue((kind, aspect, states), out var all))
        {
            all = vocabulary.WaysTo(kind, aspect, states);
            if (all.Count == 0) all = Undoing(kind, aspect, states);
            _known.Add((kind, aspect, states), all);
        }
        if (all.Count < 2) return all;
        var fromNow = all.Where(way => way.Changes.Any(change =>
            ReferenceEquals(change.Aspect, aspect) && change.From.Has(now) && Overlap(OperationProfile.EndsIn(way, change), states))).ToList();
        return fromNow.Count > 0 ? fromNow : all;
    }

    private List<Operation> Undoing(Kind kind, Aspect aspect, StateSet states)
    {
        var fitting = vocabulary.Operations.Values
            .Where(operation => operation.Undoes is not null && kind.IsA(operation.On) && operation.Changes.Any(change =>
                ReferenceEquals(change.Aspect, aspect) && Overlap(OperationProfile.EndsIn(operation, change), states)))
            .ToList();
        var nearest = kind.Lineage().FirstOrDefault(general => fitting.Any(operation => ReferenceEquals(operation.On, general)));
        return fitting.FindAll(operation => ReferenceEquals(operation.On, nearest));
    }

    private static bool Overlap(StateSet a, StateSet b) => (a.Bits & b.Bits) != 0;
}
