using ProcedureRules.Explaining;
using ProcedureRules.Quantities;

namespace ProcedureRules.Testing.Comparing;

/// <summary>Gathers what changes in plans under its causes; the same change in several plans is told once.</summary>
internal sealed class EffectLedger(ChangeIndex changes, UnitSystem units)
{
    private readonly Dictionary<string, (IReadOnlyList<PackChange> Changes, bool IsTraced, List<(PlanEffectSort Sort, string Text, List<string> Plans)> Effects)> _causes = [];

    /// <summary>Adds the difference of a plan.</summary>
    public void Add(string plan, PlanDifference difference)
    {
        var finder = new CauseFinder(changes, difference);
        foreach (var step in difference.StepsIn) Add(plan, PlanEffectSort.In, $"step: {step.Text.In(units)}", finder.Of(PlanContents.Step(step), comesIn: true));
        foreach (var step in difference.StepsOut) Add(plan, PlanEffectSort.Out, $"step: {step.Text.In(units)}", finder.Of(PlanContents.Step(step), comesIn: false));
        foreach (var moved in difference.StepsMoved) Add(plan, PlanEffectSort.Moved, $"step: {moved.Step.Text.In(units)}", finder.Of(moved));
        foreach (var changed in difference.StepsChanged) Add(plan, PlanEffectSort.Otherwise, Say(changed), finder.Of(changed));
        foreach (var entry in Beside(difference.In, difference.StepsIn.Select(step => step.Id))) Add(plan, PlanEffectSort.In, Say(entry), finder.Of(entry, comesIn: true));
        foreach (var entry in Beside(difference.Out, difference.StepsOut.Select(step => step.Id))) Add(plan, PlanEffectSort.Out, Say(entry), finder.Of(entry, comesIn: false));
    }

    /// <summary>The causes: those of the most plans first.</summary>
    public IReadOnlyList<ChangeCause> Causes() =>
    [
        .. _causes.OrderByDescending(cause => cause.Value.Effects.SelectMany(effect => effect.Plans).Distinct().Count()).ThenBy(cause => cause.Key, StringComparer.Ordinal)
            .Select(cause => new ChangeCause(cause.Value.Changes, cause.Value.IsTraced,
                [.. cause.Value.Effects.OrderByDescending(effect => effect.Plans.Count).Select(effect => new PlanEffect(effect.Sort, effect.Text, effect.Plans))])),
    ];

    private void Add(string plan, PlanEffectSort sort, string text, (IReadOnlyList<PackChange> Changes, bool IsTraced) cause)
    {
        var key = $"{cause.IsTraced} {string.Join('\n', cause.Changes)}";
        if (!_causes.TryGetValue(key, out var known)) _causes[key] = known = (cause.Changes, cause.IsTraced, []);
        var effect = known.Effects.Find(effect => effect.Sort == sort && effect.Text == text);
        if (effect.Plans is null) known.Effects.Add(effect = (sort, text, []));
        if (!effect.Plans.Contains(plan)) effect.Plans.Add(plan);
    }

    // What stands at a step that comes or goes comes or goes with it.
    private static IEnumerable<PlanEntry> Beside(IReadOnlyList<PlanEntry> entries, IEnumerable<string> steps)
    {
        var with = steps.ToHashSet();
        return entries.Where(entry => entry.Step is null || !with.Contains(entry.Step));
    }

    private string Say(PlanEntry entry) =>
        $"{(entry.Sort == PlanItemSort.Caution ? "" : $"{entry.Sort.ToString().ToLowerInvariant()}: ")}{entry.Text.In(units)}{(entry.Step is null ? "" : $" (at {entry.Step})")}";

    private string Say(ChangedStep changed)
    {
        var (before, after) = (changed.Before, changed.After);
        var says = new List<string>();
        if (before.Text.In(units) != after.Text.In(units)) says.Add($"was: {before.Text.In(units)}");
        if (before.Time != after.Time) says.Add($"{before.Time.ToDisplay(units)} becomes {after.Time.ToDisplay(units)}");
        if (before.Provisional.Count > 0 != after.Provisional.Count > 0) says.Add(after.Provisional.Count > 0 ? "only if a check says so" : "no longer behind a check");
        return $"step: {after.Text.In(units)}: {string.Join("; ", says)}";
    }
}
