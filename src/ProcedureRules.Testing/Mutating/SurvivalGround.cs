using ProcedureRules.Diagnostics;
using ProcedureRules.Inference;

namespace ProcedureRules.Testing.Mutating;

/// <summary>
/// Why nobody notices a change, in words: whether it comes to nothing where its rule matches, whether other rules say the same there, or whether it
/// is a difference that no plan shows. So a trainer knows whether a scenario is missing or the rule says too much.
/// </summary>
internal sealed class SurvivalGround
{
    private const int MostNames = 2;

    private readonly SortedSet<string> _others = new(StringComparer.Ordinal);
    private readonly SortedSet<string> _states = new(StringComparer.Ordinal);
    private bool _isExplained = true;
    private bool _isHeld;
    private bool _isOrder;

    private SurvivalGround()
    {
    }

    /// <summary>The ground.</summary>
    /// <param name="moments">The moments that were looked at.</param>
    /// <param name="differences">Those at which the change makes a difference.</param>
    public static string Of(IReadOnlyCollection<TriedStage> moments, IReadOnlyList<MadeDifference> differences)
    {
        if (differences.Count == 0)
            return $"{(moments.All(moment => moment.Forms.Forms.All(form => form.IsOff)) ? "the rule does not hold, with the change or without," : "it makes no difference")} at {Any(moments.Count)} that the rule is tried at";
        var planned = differences.Where(difference => difference.IsInPlan).ToList();
        if (planned.Count == 0) return $"no plan has the steps that it makes a difference to ({Messages.Count(differences.Count, "moment")})";
        if (planned.All(difference => difference.IsSaidAlike)) return $"the check reads alike with it, in its words and its verdict ({Messages.Count(planned.Count, "moment")})";
        if (planned.All(difference => difference.IsOpen)) return $"what the rule hangs on is not known where it makes a difference ({Messages.Count(planned.Count, "moment")})";
        var ground = new SurvivalGround();
        foreach (var difference in planned.Where(difference => !difference.IsOpen))
        {
            ground._isExplained &= difference.Effects.Count > 0;
            ground._isHeld |= difference.Tried.Of.At.IsHeld;
            foreach (var (record, effect) in difference.Effects) ground.Explain(difference.Tried, record, effect);
        }

        return $"{ground.Say()} ({Messages.Count(planned.Count, "moment")})";
    }

    private static string Any(int moments) => moments == 1 ? "the one moment" : $"any of the {moments} moments";

    private string Say()
    {
        if (!_isExplained) return _isHeld ? "it makes a difference to what is believed, and the plan comes out the same" : "it makes a difference that no expectation speaks of";
        var also = _others.Count == 0 ? "" : $"others say the same: {string.Join(", ", _others.Take(MostNames).Select(Messages.Quote))}{(_others.Count > MostNames ? $" and {_others.Count - MostNames} more" : "")}";
        var order = _isOrder ? "the steps come in an order that meets it without being asked for it" : "";
        var anyway = _states.Count == 0 ? "" : $"no plan changes {string.Join(", ", _states.Take(MostNames).Select(Messages.Quote))}, so that it is met anyway";
        return string.Join("; ", new[] { also, anyway, order }.Where(text => text.Length > 0));
    }

    private void Explain(TriedStage tried, Record record, Effect effect)
    {
        if (!Showing.IsInPlan(tried, record)) return;
        var others = Showing.Others(tried, record, effect).ToList();
        if (others.Count > 0) _others.UnionWith(others);
        else if (Showing.StateOf(record, effect) is { } state && Showing.IsSoAnyway(tried, state)) _states.Add($"{state.Part.Name}.{state.Aspect.Name}");
        else if (Showing.IsOrder(effect)) _isOrder = true;
        else _isExplained = false;
    }
}
