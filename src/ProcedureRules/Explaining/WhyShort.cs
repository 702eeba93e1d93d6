namespace ProcedureRules.Explaining;

/// <summary>An explanation in short.</summary>
/// <param name="Reasons">What says so directly.</param>
/// <param name="Facts">The facts that it was directly concluded from.</param>
/// <param name="For">The steps and jobs that ask for it directly.</param>
public sealed record WhyShort(IReadOnlyList<WhyNode> Reasons, IReadOnlyList<WhyNode> Facts, IReadOnlyList<WhyNode> For)
{
    internal static WhyShort Of(WhyNode tree)
    {
        var (facts, asking) = (new List<WhyNode>(), new List<WhyNode>());
        foreach (var reason in tree.Because) Collect(reason, facts, asking);
        return new WhyShort([.. tree.Because.SelectMany(Direct).Where(IsReason)], Distinct(facts), Distinct(asking));
    }

    // A bond between steps says what is needed; the rule that needs it is below.
    private static IEnumerable<WhyNode> Direct(WhyNode node) => node.Sort is WhyNodeSort.Want or WhyNodeSort.Item ? [node, .. node.Because] : [node];

    private static bool IsReason(WhyNode node) => node.Sort is WhyNodeSort.Rule or WhyNodeSort.Declaration or WhyNodeSort.Want or WhyNodeSort.Item;

    private static void Collect(WhyNode node, List<WhyNode> facts, List<WhyNode> asking)
    {
        if (node.Sort is WhyNodeSort.Step or WhyNodeSort.Job) asking.Add(node);
        else if (node.Sort is WhyNodeSort.Fact or WhyNodeSort.State) facts.Add(node);
        if (node.Sort is WhyNodeSort.Step or WhyNodeSort.Fact or WhyNodeSort.State) return;
        foreach (var because in node.Because) Collect(because, facts, asking);
    }

    private static IReadOnlyList<WhyNode> Distinct(List<WhyNode> nodes) => [.. nodes.DistinctBy(node => node.Text.ToString())];
}
