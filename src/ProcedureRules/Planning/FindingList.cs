using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;

namespace ProcedureRules.Planning;

/// <summary>
/// What the findings say of causes. Excluded by a sure finding; sure by a sure strong one that nothing surely or possibly speaks against; a
/// rival otherwise. What is sure comes first, then the rivals that something speaks for, last what is ruled out.
/// </summary>
internal static class FindingList
{
    public static IReadOnlyList<PlanFinding> Of(BeliefState beliefs, Reasons reasons)
    {
        var found = new List<PlanFinding>();
        var all = beliefs.Network.RecordsWith<Conclusion.Finding>()
            .Select(source => (Source: source, Finding: (Conclusion.Finding)source.Effect.Conclusion!, Level: beliefs.Available(source.Record, source.Index)))
            .Where(entry => entry.Level > Assurance.No)
            .OrderBy(entry => RecordName.Of(entry.Source.Record), StringComparer.Ordinal)
            .GroupBy(entry => (entry.Finding.Cause, Part: entry.Source.Record.Binding.Part(entry.Finding.Slot)))
            .OrderBy(group => group.Key.Cause.Name, StringComparer.Ordinal).ThenBy(group => group.Key.Part.Name, StringComparer.Ordinal);
        foreach (var group in all)
        {
            var sure = group.Where(entry => entry.Level == Assurance.Sure).ToList();
            if (sure.Count == 0) continue;
            var verdict = sure.Any(entry => entry.Finding.Speaks == Speaks.Excludes) ? Truth.No
                : sure.Any(entry => entry.Finding is { Speaks: Speaks.For, IsStrong: true }) && group.All(entry => entry.Finding.Speaks == Speaks.For) ? Truth.Yes
                : Truth.Unknown;
            found.Add(new PlanFinding(
                group.Key.Cause, group.Key.Part, Text(group.Key.Cause, group.Key.Part), verdict,
                [.. sure.Where(entry => entry.Finding.Speaks == Speaks.For).Select(entry => reasons.Of(entry.Source.Record))],
                [.. sure.Where(entry => entry.Finding.Speaks != Speaks.For).Select(entry => reasons.Of(entry.Source.Record))]));
        }
        return [.. found.OrderBy(Standing)];
    }

    private static int Standing(PlanFinding finding) => finding.Verdict switch
    {
        Truth.Yes => 0,
        Truth.No => 3,
        _ => finding.For.Count > 0 ? 1 : 2,
    };

    private static Wording Text(Cause cause, Part part) => new(cause.Text.Text.Replace("{it}", part.Text, StringComparison.Ordinal));
}
