using ProcedureRules.Language;
using ProcedureRules.Packs;

namespace ProcedureRules.Testing.Linting;

/// <summary>Which operations a plan may hold: what work or a fact names, what leads to a state that something wants, and what undoes either.</summary>
internal static class OccurringOperations
{
    public static IReadOnlySet<Operation> Of(Vocabulary vocabulary, IReadOnlyList<Conclusion> conclusions)
    {
        var wanted = Wanted(vocabulary, conclusions);
        var found = vocabulary.Facts.Select(fact => fact.FindOperation).OfType<string>().ToHashSet(StringComparer.Ordinal);
        var occurring = conclusions.OfType<Conclusion.Do>().Select(work => work.Operation).ToHashSet();
        occurring.UnionWith(vocabulary.Operations.Values.Where(operation => found.Contains(operation.Name) || LeadsTo(operation, wanted)));
        occurring.UnionWith(vocabulary.Operations.Values.Where(operation => operation.Undoes is { } undone && occurring.Contains(undone)));
        return occurring;
    }

    // What a vehicle arrives in is led back to normal; what an operation starts from is led to.
    private static Dictionary<Aspect, ulong> Wanted(Vocabulary vocabulary, IReadOnlyList<Conclusion> conclusions)
    {
        var wanted = vocabulary.Aspects.ToDictionary(aspect => aspect, aspect => aspect.IsMark ? 0UL : StateSet.Of(aspect.Normal).Bits);
        foreach (var change in vocabulary.Operations.Values.Where(operation => operation.Undoes is null).SelectMany(operation => operation.Changes))
            if (change.From.Complement(change.Aspect).Bits != 0) wanted[change.Aspect] |= change.From.Bits;
        foreach (var state in conclusions.SelectMany(States)) wanted[state.Aspect] |= state.States.Bits;
        return wanted;
    }

    private static IEnumerable<StateCondition> States(Conclusion conclusion) => conclusion switch
    {
        Conclusion.Need need => [need.State],
        Conclusion.Waypoints pass => pass.States,
        _ => [],
    };

    private static bool LeadsTo(Operation operation, Dictionary<Aspect, ulong> wanted) =>
        operation.Changes.Any(change => change.To >= 0 && new StateSet(wanted[change.Aspect]).Has(change.To));
}
