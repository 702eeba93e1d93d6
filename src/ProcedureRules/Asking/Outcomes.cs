using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;

namespace ProcedureRules.Asking;

/// <summary>The single answers that a question can get: each word, each stretch of a number between the thresholds it meets, yes and no.</summary>
internal static class Outcomes
{
    private const int MostWords = 12;
    private static readonly double[] Samples = [0.05, 0.25, 0.5, 0.75];

    /// <summary>The answers that what is known leaves open.</summary>
    public static IEnumerable<Supposition> Of(BeliefState beliefs, Reading about) =>
        Of(beliefs, about, about is Reading.OfFact { Key: var key } ? beliefs.Fact(key.Part, key.Fact) : default);

    /// <summary>
    /// Answers that leave out none of those that what is known leaves open, so that what holds under each of them holds whatever the answer; of a
    /// figure the stretches between its thresholds, each as a whole, and the thresholds themselves. Nothing where they are too many.
    /// </summary>
    public static IReadOnlyList<Supposition> All(BeliefState beliefs, Reading about)
    {
        if (about is not Reading.OfFact { Key: var key }) return [.. Of(beliefs, about)];
        var now = beliefs.Fact(key.Part, key.Fact);
        if (now.Type.IsText || (now.Type.IsWords && System.Numerics.BitOperations.PopCount(now.Words) > MostWords)) return [];
        var values = now.Type.IsQuantity ? Whole(beliefs, key, now.Quantity).Select(stretch => Value.Of(now.Type, stretch)) : Values(beliefs, key, now);
        return [.. values.Select(value => new Supposition.Observed(key, [new Observation(key, value, Source.Measured)]))];
    }

    // Between two thresholds, without them: what is too near to one to be told apart counts as it.
    private static IEnumerable<Quantity> Whole(BeliefState beliefs, FactKey key, Quantity now)
    {
        var cuts = Cuts(beliefs, key, now);
        for (var i = 0; i < cuts.Count; i++)
        {
            if (double.IsFinite(cuts[i])) yield return Quantity.Point(cuts[i], now.Dimension);
            if (i + 1 == cuts.Count) break;
            var low = double.IsFinite(cuts[i]) ? Quantity.NextApart(cuts[i], now.Dimension, isAbove: true) : cuts[i];
            var high = double.IsFinite(cuts[i + 1]) ? Quantity.NextApart(cuts[i + 1], now.Dimension, isAbove: false) : cuts[i + 1];
            if (low <= high) yield return Quantity.Between(low, high, now.Dimension);
        }
    }

    /// <summary>
    /// The answers that what is known leaves open, in words. A figure that is compared with nothing fixed has no stretches that surely come to
    /// the same: some figures of it stand for the rest.
    /// </summary>
    public static IEnumerable<(Supposition Answer, Wording Text)> Sampled(BeliefState beliefs, Reading about)
    {
        if (about is Reading.OfFact { Key: var key } && beliefs.Fact(key.Part, key.Fact) is { Type.IsQuantity: true, Quantity: { IsBounded: true, IsPoint: false } open }
            && HasNoThresholds(beliefs, about))
        {
            return from share in Samples
                   let figure = Quantity.Point(open.Low + (share * (open.High - open.Low)), open.Dimension)
                   select (
                       (Supposition)new Supposition.Observed(key, [new Observation(key, Value.Of(key.Fact.Type, figure), Source.Measured)]),
                       new Wording(units => $"it is {figure.ToDisplay(units)}, say"));
        }

        return Of(beliefs, about).Select(answer => (answer, Text(beliefs, about, answer)));
    }

    /// <summary>Whether a figure is compared with nothing fixed.</summary>
    public static bool HasNoThresholds(BeliefState beliefs, Reading about) =>
        about is Reading.OfFact { Key: var key } && beliefs.Fact(key.Part, key.Fact) is { Type.IsQuantity: true, Quantity: var open } && Cuts(beliefs, key, open).Count == 2;

    /// <summary>Every answer there is, whatever is known.</summary>
    public static IEnumerable<Supposition> OfAny(BeliefState beliefs, Reading about) =>
        Of(beliefs, about, about is Reading.OfFact fact ? Value.Unknown(fact.Key.Fact) : default);

    private static IEnumerable<Supposition> Of(BeliefState beliefs, Reading about, Value within) => about switch
    {
        Reading.OfFact fact => Values(beliefs, fact.Key, within).Select(value =>
            (Supposition)new Supposition.Observed(fact.Key, [new Observation(fact.Key, value, Source.Measured)])),
        Reading.OfRelation relation => [
            new Supposition.RelationHolds(relation.Relation, relation.A, relation.B, Truth.Yes),
            new Supposition.RelationHolds(relation.Relation, relation.A, relation.B, Truth.No)],
        Reading.OfPart part => [new Supposition.PartExists(part.Part, Truth.Yes), new Supposition.PartExists(part.Part, Truth.No)],
        _ => [],
    };

    /// <summary>An answer in words; a value that stands for a stretch is told as the stretch.</summary>
    public static Wording Text(BeliefState beliefs, Reading about, Supposition answer) =>
        Text(beliefs, answer, about is Reading.OfFact { Key: var key } ? beliefs.Fact(key.Part, key.Fact) : default);

    /// <summary>One of <see cref="OfAny"/> in words.</summary>
    public static Wording TextOfAny(BeliefState beliefs, Reading about, Supposition answer) =>
        Text(beliefs, answer, about is Reading.OfFact fact ? Value.Unknown(fact.Key.Fact) : default);

    private static Wording Text(BeliefState beliefs, Supposition answer, Value within) => answer switch
    {
        Supposition.Observed { Key: var key, Observations: [var observation] } when observation.Value.Type.IsQuantity =>
            StretchText(Cuts(beliefs, key, within.Quantity), observation.Value.Quantity),
        Supposition.Observed { Observations: [var observation] } => new(units => observation.Value.In(units)),
        Supposition.RelationHolds holds => new(holds.Truth == Truth.Yes ? "yes" : "no"),
        Supposition.PartExists exists => new(exists.Truth == Truth.Yes ? "yes" : "no"),
        _ => new(""),
    };

    private static Wording StretchText(List<double> cuts, Quantity inside)
    {
        var above = cuts.FindLastIndex(cut => cut <= inside.Low);
        var (low, high) = (above < 0 ? double.NegativeInfinity : cuts[above], above + 1 < cuts.Count ? cuts[above + 1] : double.PositiveInfinity);
        if (above <= 0 && double.IsFinite(high)) return new(units => $"below {Quantity.Point(high, inside.Dimension).ToDisplay(units)}");
        if (above + 2 >= cuts.Count && double.IsFinite(low)) return new(units => $"above {Quantity.Point(low, inside.Dimension).ToDisplay(units)}");
        return new(units => Quantity.Between(low, high, inside.Dimension).ToDisplay(units));
    }

    private static IEnumerable<Value> Values(BeliefState beliefs, FactKey key, Value now)
    {
        if (now.Type.IsText) return [];
        if (now.Type.IsWords) return Enumerable.Range(0, now.Type.Words.Count).Where(i => (now.Words >> i & 1) != 0).Take(MostWords).Select(i => Value.OfWords(now.Type, 1UL << i));
        return Stretches(beliefs, key, now.Quantity).Select(stretch => Value.Of(now.Type, stretch));
    }

    private static IEnumerable<Quantity> Stretches(BeliefState beliefs, FactKey key, Quantity now)
    {
        var list = Cuts(beliefs, key, now);
        if (list.Count == 1) yield return Quantity.Point(list[0], now.Dimension);
        for (var i = 1; i < list.Count; i++) yield return Middle(list[i - 1], list[i], now.Dimension);
    }

    // The bounds of what is open, and the thresholds between them at which a condition turns.
    private static List<double> Cuts(BeliefState beliefs, FactKey key, Quantity now)
    {
        var cuts = new SortedSet<double> { now.Low, now.High };
        foreach (var record in beliefs.Network.Readers(new Reading.OfFact(key)))
            foreach (var test in record.Tests)
                foreach (var (fact, threshold) in test.Thresholds?.Invoke(record.Binding, beliefs) ?? [])
                {
                    if (fact != key) continue;
                    if (threshold.Low > now.Low && threshold.Low < now.High) cuts.Add(threshold.Low);
                    if (threshold.High > now.Low && threshold.High < now.High) cuts.Add(threshold.High);
                }
        return [.. cuts];
    }

    // One value stands for a stretch, since no condition turns inside it.
    private static Quantity Middle(double low, double high, Dimension dimension)
    {
        if (double.IsInfinity(low)) return Quantity.Point(double.IsInfinity(high) ? 0 : high - 1, dimension);
        return Quantity.Point(double.IsInfinity(high) ? low + 1 : (low / 2) + (high / 2), dimension);
    }
}
