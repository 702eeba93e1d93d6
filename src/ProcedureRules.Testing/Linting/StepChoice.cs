using ProcedureRules.Language;
using ProcedureRules.Packs;

namespace ProcedureRules.Testing.Linting;

/// <summary>Whether an operation meets what a rule says of one of its steps.</summary>
internal static class StepChoice
{
    /// <summary>Whether some part on which it can be done could make it meet a condition of a rule.</summary>
    public static bool Meets(Operation operation, Pattern pattern, CompiledRule rule)
    {
        var (sort, name, detail) = pattern.Predicate;
        var kind = pattern.Second >= 0 ? rule.Variables[pattern.Second].Kind : null;
        return sort switch
        {
            PredicateSort.Does => operation.Name == name,
            PredicateSort.Place => operation.Place == name,
            PredicateSort.Energy => operation.Energies.Contains(name),
            PredicateSort.Phase => string.Equals(operation.Phase.ToString(), name, StringComparison.OrdinalIgnoreCase),
            PredicateSort.On => Fits(operation.On, kind),
            PredicateSort.Touches => Fits(operation.On, kind) || operation.Touches.Any(touched => Fits(touched, kind)),
            PredicateSort.Moves => (operation.MovesIt && Fits(operation.On, kind)) || operation.Moves.Any(moved => Fits(moved, kind)),
            PredicateSort.Leaves => Fits(operation.On, kind) && operation.Changes.Any(change => Leaves(change, name, detail)),
            PredicateSort.Reaches => Fits(operation.On, kind) && operation.Changes.Any(change => Reaches(operation, change, name, detail)),
            _ => true,
        };
    }

    private static bool Fits(Kind one, Kind? other) => other is null || one.IsA(other) || other.IsA(one);

    private static bool Leaves(StateChange change, string aspect, string state) =>
        change.Aspect.Name == aspect && IndexOf(change.Aspect, state) is var index and >= 0 && change.To != index && change.From.Has(index);

    private static bool Reaches(Operation operation, StateChange change, string aspect, string state)
    {
        if (change.Aspect.Name != aspect || IndexOf(change.Aspect, state) is not (var index and >= 0)) return false;
        if (change.To >= 0) return change.To == index;
        return operation.Undoes?.Changes.FirstOrDefault(done => ReferenceEquals(done.Aspect, change.Aspect)) is { } undone && undone.From.Has(index);
    }

    private static int IndexOf(Aspect aspect, string state)
    {
        for (var i = 0; i < aspect.States.Count; i++)
            if (aspect.States[i] == state) return i;
        return -1;
    }
}
