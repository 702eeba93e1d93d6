using System.Globalization;
using ProcedureRules.Diagnostics;

namespace ProcedureRules.Testing.Approving;

/// <summary>The approved plan of one turn of a case, as its file has it.</summary>
/// <param name="Name">The row, or the scenario, with its turn.</param>
/// <param name="Like">The section it is told against; null where it stands in full.</param>
/// <param name="Lines">What it says.</param>
/// <param name="Span">Where its name is written.</param>
internal sealed record ApprovedSection(string Name, ApprovedSection? Like, IReadOnlyList<string> Lines, SourceSpan Span)
{
    /// <summary>The section of a turn of a case.</summary>
    public static string NameOf(ScenarioCase of, int turn) => string.Create(CultureInfo.InvariantCulture, $"{of.Row ?? of.Scenario}{(turn == 0 ? "" : $", turn {turn}")}");

    /// <summary>What differs in a plan from what is approved, line by line; nothing where it is as approved.</summary>
    public IReadOnlyList<string> DifferencesOf(IReadOnlyList<OutlineBlock> outline)
    {
        var came = Like is null ? OutlineText.Full(outline) : OutlineText.Against(OutlineText.Read(Like.Lines), outline);
        return came.SequenceEqual(Lines) ? [] : LineDifference.Between(Placed(Lines), Placed(came));
    }

    // Each line with the step or list that it stands under, since a difference shows it alone.
    private static List<string> Placed(IReadOnlyList<string> lines)
    {
        var (placed, heading) = (new List<string>(), "");
        foreach (var line in lines)
        {
            var isBelow = line.StartsWith(OutlineText.Indent, StringComparison.Ordinal);
            placed.Add(isBelow ? $"{heading}: {line.Trim()}" : line);
            if (!isBelow) heading = line.TrimStart('~', '+', '-', ' ');
        }

        return placed;
    }
}
