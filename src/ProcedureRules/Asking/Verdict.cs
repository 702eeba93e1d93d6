using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;

namespace ProcedureRules.Asking;

/// <summary>
/// What the findings under some beliefs say of one cause. Excluded by a sure finding; sure by a sure strong one that nothing surely or
/// possibly speaks against; a rival otherwise.
/// </summary>
internal sealed record Verdict(Cause Cause, Part Part, Truth Truth, IReadOnlyList<Record> For, IReadOnlyList<Record> Against)
{
    /// <summary>The causes that some sure finding speaks of.</summary>
    public static IReadOnlyList<Verdict> Under(BeliefState beliefs)
    {
        var verdicts = new List<Verdict>();
        var all = beliefs.Network.RecordsWith<Conclusion.Finding>()
            .Select(source => (source.Record, Finding: (Conclusion.Finding)source.Effect.Conclusion!, Level: beliefs.Available(source.Record, source.Index)))
            .Where(entry => entry.Level > Assurance.No)
            .OrderBy(entry => entry.Record.Name, StringComparer.Ordinal)
            .GroupBy(entry => (entry.Finding.Cause, Part: entry.Record.Binding.Part(entry.Finding.Slot)))
            .OrderBy(group => group.Key.Cause.Name, StringComparer.Ordinal).ThenBy(group => group.Key.Part.Name, StringComparer.Ordinal);
        foreach (var group in all)
        {
            var sure = group.Where(entry => entry.Level == Assurance.Sure).ToList();
            if (sure.Count == 0) continue;
            var truth = sure.Any(entry => entry.Finding.Speaks == Speaks.Excludes) ? Truth.No
                : sure.Any(entry => entry.Finding is { Speaks: Speaks.For, IsStrong: true }) && group.All(entry => entry.Finding.Speaks == Speaks.For) ? Truth.Yes
                : Truth.Unknown;
            verdicts.Add(new Verdict(
                group.Key.Cause, group.Key.Part, truth,
                [.. sure.Where(entry => entry.Finding.Speaks == Speaks.For).Select(entry => entry.Record)],
                [.. sure.Where(entry => entry.Finding.Speaks != Speaks.For).Select(entry => entry.Record)]));
        }

        return verdicts;
    }
}
