using ProcedureRules.Facts;
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
