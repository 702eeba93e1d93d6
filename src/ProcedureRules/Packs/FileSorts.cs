using ProcedureRules.Diagnostics;
using ProcedureRules.Yaml;

namespace ProcedureRules.Packs;

/// <summary>Tells the files a person writes apart by the key that only one sort of them has.</summary>
internal static class FileSorts
{
    private static readonly (string Key, string Noun)[] All =
        [("pack", "a pack"), ("work_order", "a work order"), ("vehicle", "a vehicle sheet"), ("scenario", "a scenario"), ("shop", "a shop")];

    /// <summary>Whether a file is a work order, be it one whose title is missing: beside a vehicle, only it asks for jobs.</summary>
    public static bool IsWorkOrder(YamlMapping root) =>
        root.Has("work_order") || (root.Has("jobs") && !All.Any(sort => sort.Key != "vehicle" && root.Has(sort.Key)));

    /// <summary>
    /// Whether a file may be of the sort that is due. One that plainly is of another sort gets one complaint, instead of one for each key.
    /// </summary>
    public static bool MayBe(YamlNode node, string due, DiagnosticBag bag)
    {
        if (node is not YamlMapping root || root.Has(due) || (due == "work_order" && IsWorkOrder(root)))
            return true;
        foreach (var (key, noun) in All)
        {
            if (root.Entry(key) is not { } entry)
                continue;
            bag.Add(Messages.FileOfOtherSort(entry.Key.Span, noun, All.First(sort => sort.Key == due).Noun));
            return false;
        }

        return true;
    }
}
