using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;

namespace ProcedureRules.Beliefs;

/// <summary>What the statements on a part or a relation come to: the highest source has the word; where it contradicts itself, nothing is known.</summary>
internal static class Statements
{
    /// <summary>What is stated of a part. Silence was settled when the sheet was read: a part without a statement is there unless its kind says that silence means unknown.</summary>
    public static AtomInput OfPart(Situation situation, Part part)
    {
        var statements = situation.PartStatements.Where(statement => ReferenceEquals(statement.Part, part)).Select(s => (s.Exists, s.Source));
        return Merge(statements) ?? AtomInput.Of(part.Kind.IfSilent == Truth.Unknown ? Truth.Unknown : Truth.Yes, Source.Stated);
    }

    /// <summary>What is stated of all parts and relations.</summary>
    public static Dictionary<(Relation, Part, Part), AtomInput> OfRelations(Situation situation) => situation.Relations
        .GroupBy(statement => (statement.Relation, statement.A, statement.B))
        .ToDictionary(group => group.Key, group => Merge(group.Select(s => (s.Holds, s.Source)))!.Value);

    /// <summary>The parts and relations on which the highest source contradicts itself, with what that comes to.</summary>
    public static IEnumerable<(Atom Atom, AtomInput Input)> Contradictory(Situation situation) =>
        situation.PartStatements.GroupBy(statement => (Atom)new Atom.Exists(statement.Part), statement => (statement.Exists, statement.Source))
            .Concat(situation.Relations.GroupBy(statement => (Atom)new Atom.Related(statement.Relation, statement.A, statement.B), statement => (statement.Holds, statement.Source)))
            .Where(group => Best(group) is var best && best.Contains(Truth.Yes) && best.Contains(Truth.No))
            .Select(group => (group.Key, Merge(group)!.Value));

    /// <summary>Everything that is stated of a part or a relation.</summary>
    public static IEnumerable<(Truth Truth, Source Source)> Behind(Situation situation, Reading about) => about switch
    {
        Reading.OfPart(var part) => situation.PartStatements.Where(statement => statement.Part == part).Select(statement => (statement.Exists, statement.Source)),
        Reading.OfRelation(var relation, var a, var b) => situation.Relations
            .Where(statement => statement.Relation == relation && statement.A == a && statement.B == b).Select(statement => (statement.Holds, statement.Source)),
        _ => [],
    };

    /// <summary>How a part or a relation is read.</summary>
    public static Reading ReadingOf(Atom atom) => atom switch
    {
        Atom.Exists exists => new Reading.OfPart(exists.Part),
        Atom.Related related => new Reading.OfRelation(related.Relation, related.A, related.B),
        _ => throw new ArgumentOutOfRangeException(nameof(atom)),
    };

    private static HashSet<Truth> Best(IEnumerable<(Truth Truth, Source Source)> statements)
    {
        var all = statements.ToList();
        var best = all.Max(statement => statement.Source);
        return [.. all.Where(statement => statement.Source == best).Select(statement => statement.Truth)];
    }

    private static AtomInput? Merge(IEnumerable<(Truth Truth, Source Source)> statements)
    {
        AtomInput? merged = null;
        Truth? truth = null;
        foreach (var statement in statements)
        {
            if (merged is { } known && statement.Source < known.Source) continue;
            truth = merged?.Source == statement.Source && truth != statement.Truth ? Truth.Unknown : statement.Truth;
            merged = AtomInput.Of(truth.Value, statement.Source);
        }

        return merged;
    }
}
