using ProcedureRules.Diagnostics;

namespace ProcedureRules.Packs;

/// <summary>Looks for operations that leave an aspect in a state from which no operations lead back to normal.</summary>
internal static class WayBackCheck
{
    /// <summary>Reports them; to be asked only where every operation could be read.</summary>
    public static void Check(PackDraft draft)
    {
        foreach (var operation in draft.Operations.Items)
        {
            foreach (var change in operation.Changes.Where(change => !change.Aspect.IsMark && change.To >= 0))
            {
                if (!LeadsBack(change, operation.On, draft))
                    draft.Bag.Add(Messages.NoWayBack(operation.Span, change.Aspect.States[change.To], change.Aspect.ToString(), change.Aspect.States[change.Aspect.Normal]));
            }
        }
    }

    private static bool LeadsBack(StateChange left, Kind kind, PackDraft draft)
    {
        var moves = (
            from operation in draft.Operations.Items
            where kind.IsA(operation.On)
            from change in operation.Changes
            where ReferenceEquals(change.Aspect, left.Aspect)
            select (change.From, To: Reached(operation, change))).ToList();
        var reached = StateSet.Of(left.To);
        for (var isGrowing = true; isGrowing;)
        {
            var bits = moves.Where(move => (move.From.Bits & reached.Bits) != 0).Aggregate(reached.Bits, (all, move) => all | move.To.Bits);
            isGrowing = bits != reached.Bits;
            reached = new StateSet(bits);
        }

        return reached.Has(left.Aspect.Normal);
    }

    private static StateSet Reached(Operation operation, StateChange change)
    {
        if (change.To >= 0)
            return StateSet.Of(change.To);
        var found = operation.Undoes?.Changes.FirstOrDefault(done => ReferenceEquals(done.Aspect, change.Aspect));
        return found?.From ?? new StateSet(0);
    }
}
