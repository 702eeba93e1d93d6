using ProcedureRules.Language;
using ProcedureRules.Packs;

namespace ProcedureRules.Inference;

/// <summary>The predicates that a step of an operation meets, as far as rules read them.</summary>
internal sealed class OperationProfile
{
    public OperationProfile(Operation operation, Func<Predicate, int> numberOf)
    {
        OfStep = Numbers(AboutStep(operation), numberOf);
        OfStepAndPart = Numbers(AboutPart(operation), numberOf);
        Others =
        [
            .. Elsewhere(PredicateSort.Touches, operation.Touches),
            .. Elsewhere(PredicateSort.Moves, operation.Moves),
        ];

        IEnumerable<(int Predicate, Kind Kind)> Elsewhere(PredicateSort sort, IReadOnlyList<Kind> kinds) =>
            numberOf(new(sort)) is >= 0 and var number ? kinds.Distinct().Select(kind => (number, kind)) : [];
    }

    /// <summary>Predicates of the step alone.</summary>
    public int[] OfStep { get; }

    /// <summary>Predicates of the step and the part it works on.</summary>
    public int[] OfStepAndPart { get; }

    /// <summary>Predicates of the step and every part of a kind.</summary>
    public IReadOnlyList<(int Predicate, Kind Kind)> Others { get; }

    /// <summary>
    /// The states that a change can end in: one, or for "as it was before" every state that the undone step can have found.
    /// </summary>
    public static StateSet EndsIn(Operation operation, StateChange change) => change.To >= 0
        ? StateSet.Of(change.To)
        : operation.Undoes?.Changes.FirstOrDefault(undone => undone.Aspect == change.Aspect)?.From ?? default;

    private static int[] Numbers(IEnumerable<Predicate> predicates, Func<Predicate, int> numberOf) =>
        [.. predicates.Distinct().Select(numberOf).Where(number => number >= 0)];

    private static IEnumerable<Predicate> AboutStep(Operation operation)
    {
        yield return new(PredicateSort.Step);
        yield return new(PredicateSort.Does, operation.Name);
        yield return new(PredicateSort.Place, operation.Place);
        yield return new(PredicateSort.Phase, operation.Phase.ToString().ToLowerInvariant());
        foreach (var energy in operation.Energies) yield return new(PredicateSort.Energy, energy);
    }

    private static IEnumerable<Predicate> AboutPart(Operation operation)
    {
        yield return new(PredicateSort.On);
        yield return new(PredicateSort.Touches);
        if (operation.MovesIt) yield return new(PredicateSort.Moves);
        foreach (var change in operation.Changes)
        {
            var aspect = change.Aspect;
            var to = EndsIn(operation, change);
            foreach (var state in StatesOf(aspect, change.From))
                if (to != StateSet.Of(state)) yield return new(PredicateSort.Leaves, aspect.Name, aspect.States[state]);
            foreach (var state in StatesOf(aspect, to)) yield return new(PredicateSort.Reaches, aspect.Name, aspect.States[state]);
        }
    }

    private static IEnumerable<int> StatesOf(Aspect aspect, StateSet states) => states.States().Where(state => state < aspect.States.Count);
}
