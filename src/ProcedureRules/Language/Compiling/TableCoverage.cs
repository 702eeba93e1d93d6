using ProcedureRules.Diagnostics;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Compiling;

/// <summary>
/// Looks whether every combination of inputs has exactly one row. A quantity is cut at the bounds that its cells name, into points and the
/// open stretches between them; within one of those no row can tell two figures apart, so one figure of each is enough.
/// </summary>
internal sealed class TableCoverage(FactDefinition[] inputs, TableCell[][] rows)
{
    /// <summary>Beyond this many combinations a table is for nobody to read.</summary>
    public const int MostCombinations = 200_000;

    public void Report(DiagnosticBag bag, IReadOnlyList<string> names, SourceSpan table, IReadOnlyList<SourceSpan> rowSpans)
    {
        var pieces = inputs.Select((input, i) => input.Type.IsWords ? Words(input.Type) : Stretches(input, i)).ToArray();
        if (pieces.Aggregate(1L, (all, one) => Math.Min(all * one.Count, MostCombinations + 1L)) > MostCombinations)
        {
            bag.Add(Messages.TableTooBig(table, MostCombinations));
            return;
        }

        var gaps = new List<string>();
        var overlaps = new HashSet<(int, int)>();
        var at = new int[pieces.Length];
        do
        {
            var taking = Enumerable.Range(0, rows.Length).Where(row => Takes(rows[row], pieces, at)).ToList();
            if (taking.Count == 0) gaps.Add(Text(names, pieces, at));
            for (var i = 1; i < taking.Count; i++)
                if (overlaps.Add((taking[0], taking[i])))
                    bag.Add(Messages.TableOverlap(rowSpans[taking[i]], taking[0] + 1, taking[i] + 1, Text(names, pieces, at), rowSpans[taking[0]]));
        }
        while (Next(at, pieces));

        if (gaps.Count > 0) bag.Add(Messages.TableGap(table, gaps));
    }

    private static bool Takes(TableCell[] row, List<Piece>[] pieces, int[] at)
    {
        for (var i = 0; i < at.Length; i++)
        {
            var piece = pieces[i][at[i]];
            if (piece.Word >= 0 ? !row[i].Takes(piece.Word) : !row[i].Takes(piece.Figure)) return false;
        }

        return true;
    }

    private static bool Next(int[] at, List<Piece>[] pieces)
    {
        for (var i = at.Length - 1; i >= 0; i--)
        {
            if (++at[i] < pieces[i].Count) return true;
            at[i] = 0;
        }

        return false;
    }

    private static string Text(IReadOnlyList<string> names, List<Piece>[] pieces, int[] at) =>
        string.Join(", ", at.Select((index, i) => $"{names[i]} {pieces[i][index].Text}"));

    private static List<Piece> Words(FactType type) => [.. type.Words.Select((word, i) => new Piece(i, 0, $"is {word}"))];

    private List<Piece> Stretches(FactDefinition input, int index)
    {
        var dimension = input.Type.Dimension.GetValueOrDefault();
        var range = input.Plausible ?? Quantity.Anything(dimension);
        double[] cuts = [.. rows.SelectMany(row => new[] { row[index].Low, row[index].High })
            .Append(range.Low).Append(range.High)
            .Where(cut => double.IsFinite(cut) && cut >= range.Low && cut <= range.High).Distinct().Order()];
        if (cuts.Length == 0) return [new(-1, 0, "is anything")];
        var pieces = new List<Piece>();
        if (double.IsInfinity(range.Low)) pieces.Add(new(-1, cuts[0] - Math.Max(1, Math.Abs(cuts[0])), $"below {Figure(cuts[0])}"));
        for (var i = 0; i < cuts.Length; i++)
        {
            pieces.Add(new(-1, cuts[i], $"is {Figure(cuts[i])}"));
            if (i + 1 < cuts.Length) pieces.Add(new(-1, cuts[i] + ((cuts[i + 1] - cuts[i]) / 2), $"between {Figure(cuts[i])} and {Figure(cuts[i + 1])}"));
        }

        if (double.IsInfinity(range.High)) pieces.Add(new(-1, cuts[^1] + Math.Max(1, Math.Abs(cuts[^1])), $"above {Figure(cuts[^1])}"));
        return pieces;

        string Figure(double value) => Quantity.Point(value, dimension).ToDisplay(UnitSystem.Us);
    }

    /// <summary>A word, or a figure that stands for a point or a stretch; and how a message says it.</summary>
    private readonly record struct Piece(int Word, double Figure, string Text);
}
