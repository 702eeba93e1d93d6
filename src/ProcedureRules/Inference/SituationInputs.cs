using ProcedureRules.Facts;
using ProcedureRules.Logic;

namespace ProcedureRules.Inference;

/// <summary>What inference takes from a situation: everything that is at least possible. Readings are not among it.</summary>
internal static class SituationInputs
{
    /// <summary>The atoms that a situation states, parts before what is said of them.</summary>
    public static IEnumerable<Atom> Of(Situation situation)
    {
        yield return Atom.Given.Always;
        foreach (var ((part, aspect), state) in situation.States)
            if (state != aspect.Normal) yield return new Atom.Arrived(part, aspect, state);
        var denied = Denied(situation.PartStatements, statement => (object)statement.Part, statement => (statement.Source, statement.Exists));
        foreach (var part in situation.Parts)
            if (!denied.Contains(part)) yield return new Atom.Exists(part);
        var refuted = Denied(
            situation.Relations,
            statement => new Atom.Related(statement.Relation, statement.A, statement.B),
            statement => (statement.Source, statement.Holds));
        foreach (var (relation, a, b, _, _, _) in situation.Relations)
        {
            var related = new Atom.Related(relation, a, b);
            if (!refuted.Contains(related)) yield return related;
        }
        foreach (var request in situation.Jobs) yield return new Atom.Asked(request);
    }

    /// <summary>Whether two situations can only differ in readings.</summary>
    public static bool AreSame(Situation a, Situation b) => ReferenceEquals(a.Parts, b.Parts) && ReferenceEquals(a.PartStatements, b.PartStatements)
        && ReferenceEquals(a.Relations, b.Relations) && ReferenceEquals(a.States, b.States) && ReferenceEquals(a.Jobs, b.Jobs);

    /// <summary>What the best sources agree is not so. Where equal ones disagree it is open, hence possible.</summary>
    private static HashSet<TKey> Denied<TStatement, TKey>(
        IEnumerable<TStatement> statements, Func<TStatement, TKey> keyOf, Func<TStatement, (Source Source, Truth Truth)> read)
        where TKey : notnull
    {
        var best = new Dictionary<TKey, (Source Source, bool IsDenied)>();
        foreach (var statement in statements)
        {
            var (source, truth) = read(statement);
            var key = keyOf(statement);
            var isDenied = truth == Truth.No;
            if (!best.TryGetValue(key, out var known) || source > known.Source) best[key] = (source, isDenied);
            else if (source == known.Source) best[key] = (source, isDenied && known.IsDenied);
        }
        return [.. best.Where(entry => entry.Value.IsDenied).Select(entry => entry.Key)];
    }
}
