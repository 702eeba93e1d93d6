using ProcedureRules.Language;
using ProcedureRules.Packs;

namespace ProcedureRules.Testing.Mutating;

/// <summary>Other conclusions in the place of one: an order swapped, a signal word weakened, a figure moved, the unknown taken otherwise.</summary>
internal static class ConclusionVariants
{
    public static IEnumerable<(string Change, string Due, Conclusion Other)> Of(Conclusion conclusion, bool saysOfUnknown)
    {
        switch (conclusion)
        {
            case Conclusion.Order order:
                yield return ("swap the order", "a case with both steps, that expects their order", order with { First = order.Second, Second = order.First });
                break;
            case Conclusion.Caution { Signal: not Signal.Notice } caution:
                yield return ($"{Word(caution.Signal)} becomes {Word(caution.Signal - 1)}", $"a case that expects these words as a {Word(caution.Signal)}", caution with { Signal = caution.Signal - 1 });
                break;
        }

        foreach (var (figure, moved, other) in Figures(conclusion)) yield return ($"{figure} becomes {moved}", $"a case that tells {figure} from {moved}", other);
        if (!saysOfUnknown || conclusion is Conclusion.OneOf or Conclusion.Know or Conclusion.Figure or Conclusion.Waypoints) yield break;
        var unknown = conclusion.IfUnknown == IfUnknown.Hold ? IfUnknown.Do : IfUnknown.Hold;
        yield return ($"if_unknown: {Word(conclusion.IfUnknown)} becomes {Word(unknown)}", "a case in which a condition of the rule is not known", conclusion with { IfUnknown = unknown });
    }

    private static IEnumerable<(string Figure, string Moved, Conclusion Other)> Figures(Conclusion conclusion) => conclusion switch
    {
        Conclusion.Set set => TestVariants.Moved(set.Value).Select(to => (to.Figure, to.Moved, (Conclusion)(set with { Value = to.Other }))),
        Conclusion.Demand demand => TestVariants.Moved(demand.Value).Select(to => (to.Figure, to.Moved, (Conclusion)(demand with { Value = to.Other }))),
        Conclusion.Check check => TestVariants.Moved(check.Limits).Select(to => (to.Figure, to.Moved, (Conclusion)(check with { Limits = to.Other }))),
        Conclusion.Wait wait => TestVariants.Moved(wait.Least).Select(to => (to.Figure, to.Moved, (Conclusion)(wait with { Least = to.Other })))
            .Concat(TestVariants.Moved(wait.Most).Select(to => (to.Figure, to.Moved, (Conclusion)(wait with { Most = to.Other })))),
        _ => [],
    };

    private static string Word(Signal signal) => signal.ToString().ToLowerInvariant();

    private static string Word(IfUnknown unknown) => unknown == IfUnknown.BehindCheck ? "behind_check" : unknown.ToString().ToLowerInvariant();
}
