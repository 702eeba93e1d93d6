using ProcedureRules.Asking;
using ProcedureRules.Beliefs;
using ProcedureRules.Choosing;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Ordering;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;

namespace ProcedureRules.Planning;

/// <summary>
/// Writes down the choices made, with what each way not taken would have cost or why it is not open. The plan's labour holds more than its
/// choices cost: what moments draw in. With another way it is taken to be the same.
/// </summary>
internal sealed class ChoiceWriter(Decision decision, ChoiceBook book, PlannerOptions options, Reasons reasons, Quantity labour)
{
    private const int MostHypotheses = 400;
    private const int MostTried = 16;
    private readonly BeliefState _beliefs = decision.Beliefs;

    public IReadOnlyList<PlanChoice> Write(IReadOnlyList<Occurrence> occurrences)
    {
        var steps = occurrences.Select(occurrence => occurrence.Work.Step).ToHashSet();
        return [.. decision.Taken.Where(taken => Matters(taken.Key, taken.Option, steps)).Select(taken => Write(taken.Key, taken.Option))];
    }

    // A choice that only a moment could have asked for is shown where its way was gone.
    private bool Matters(ChoiceKey key, int option, HashSet<Step> steps) =>
        _beliefs.Required(new Atom.Open(key)) >= Assurance.Provisional
        || book.Options(key)[option].Records.Any(record => record.Effects.Any(effect => effect.Atom is Atom.Occurs occurs && steps.Contains(occurs.Step)));

    private PlanChoice Write(ChoiceKey key, int taken)
    {
        var because = _beliefs.Network.RecordsSupporting(new Atom.Open(key))
            .Where(support => _beliefs.Available(support.Record, support.Index) > Assurance.No)
            .OrderBy(support => support.Record.Name, StringComparer.Ordinal)
            .Select(support => reasons.Of(support.Record)).Take(3).ToList();
        var isFixed = decision.Root.Taken(key) is not null;
        return new PlanChoice
        {
            Key = key,
            Id = ChoiceName.Of(key, book.Keys),
            IsFixed = isFixed,
            Text = new Wording(Words.Choice(key)),
            Taken = taken,
            Ways = [.. book.Options(key).Select(option => Write(key, option, book.Options(key)[taken], isFixed))],
            Because = because,
        };
    }

    private PlanChoice.Way Write(ChoiceKey key, ChoiceOption option, ChoiceOption taken, bool isFixed) =>
        new(ChoiceName.Of(option, book.Options(key)), Text(key, option), option.Rank, () => Compare(key, option, taken, isFixed));

    private (Quantity? Labour, Wording? WhyNot) Compare(ChoiceKey key, ChoiceOption option, ChoiceOption taken, bool isFixed)
    {
        if (option.Index == taken.Index) return (labour, null);
        var binding = (key as ChoiceKey.OfRule)?.Binding;
        var isOpen = option.IsOpen(_beliefs, binding);
        var condition = option.Option?.If is { } test && option.Records.Count > 0 ? Words.Condition(option.Records[0], test) : option.Option?.If?.Text ?? "";
        if (isOpen == Truth.No) return (null, new Wording($"not open here: it takes {condition}"));

        var there = decision.Root.With([new Supposition.Takes(key, option.Index)]);
        if (isOpen == Truth.Unknown) there = Answered(there, option, binding!);
        if (Best(there, key) is not { } other) return (null, new Wording("no way on from there"));
        if (isOpen == Truth.Yes && other.Faults.Count > 0) return (null, Why(other.Faults[0], option));
        var whole = With(other.Cost);
        if (isOpen == Truth.Unknown) return (whole, new Wording(units => $"open only if {condition}; the whole job would take {whole.ToDisplay(units)}{Saving(other.Cost, units)}"));
        return (whole, isFixed ? Beside(option, taken, other.Cost) : Compare(option, taken, other));
    }

    // The best that can be had with a way taken; what else was decided is decided anew, but not so that the choice no longer comes up.
    private Decision? Best(BeliefState there, ChoiceKey key)
    {
        Decision? first = null;
        foreach (var other in new Chooser(book, options with { MostHypotheses = MostHypotheses }, CancellationToken.None).From(there).Take(MostTried))
        {
            if (other.Taken.Any(taken => taken.Key.Equals(key))) return other;
            first ??= other;
        }

        return first;
    }

    private Quantity With(Cost other)
    {
        var (mine, theirs) = (decision.Cost.ToQuantity(), other.ToQuantity());
        var low = Math.Max(0, labour.Low + theirs.Low - mine.Low);
        return Quantity.Between(low, Math.Max(low, labour.High + theirs.High - mine.High), Dimension.Duration);
    }

    private string Saving(Cost other, UnitSystem units) =>
        other.CompareTo(decision.Cost) < 0 && Minutes(decision.Cost, other) is { Low: > 0 } saved ? $", about {saved.ToDisplay(units)} less" : "";

    // Of a choice that the technician fixed each other way says what it would save or cost more.
    private Wording Beside(ChoiceOption option, ChoiceOption taken, Cost other)
    {
        var theirs = With(other);
        var rank = option.Rank < taken.Rank ? "ranks before the way fixed; " : option.Rank > taken.Rank ? "ranks behind the way fixed; " : "";
        return new Wording(units =>
        {
            var difference = Minutes(decision.Cost, other);
            var words = difference.Low == 0 ? "as much likely labour" : $"about {difference.ToDisplay(units)} {(other.Twice < decision.Cost.Twice ? "less" : "more")}";
            return $"{rank}the whole job would take {theirs.ToDisplay(units)} against {labour.ToDisplay(units)}: {words}";
        });
    }

    // To the minute: nobody estimates labour finer.
    private static Quantity Minutes(Cost one, Cost other) => Quantity.Point(60 * Math.Round(Math.Abs(one.Likely - other.Likely) / 60), Dimension.Duration);

    // A way that is forbidden itself says only why, or what may be why; one that leads to something forbidden says what that is.
    private Wording Why(Fault fault, ChoiceOption option)
    {
        var reason = reasons.Of(fault.Record);
        var isItself = option.Records.Any(record => record.Effects.Any(effect => fault.Atom is not null && fault.Atom.Equals(effect.Atom)));
        var open = Enumerable.Range(0, fault.Record.Tests.Count).Where(test => _beliefs.TruthOf(fault.Record, test) == Truth.Unknown)
            .Select(test => Words.Condition(fault.Record, fault.Record.Tests[test])).ToList();
        if (isItself && open.Count > 0) return new Wording($"may not be done if {string.Join(" and ", open)}, which is not known");
        return new Wording(units => isItself ? $"may not be done: {reason.Text.In(units)}" : $"{fault.Text.In(units)}: {reason.Text.In(units)}");
    }

    // The beliefs after the one answer that would open the way, where one answer can.
    private static BeliefState Answered(BeliefState beliefs, ChoiceOption option, Binding binding)
    {
        foreach (var reading in new Openness(beliefs).Behind(option.Option!.If!.Reads(binding, beliefs.PartsOf)))
            foreach (var outcome in Outcomes.Of(beliefs, reading))
                if (beliefs.With([outcome]) is var answered && option.IsOpen(answered, binding) == Truth.Yes) return answered;
        return beliefs;
    }

    private Wording Compare(ChoiceOption option, ChoiceOption taken, Decision other)
    {
        if (option.Rank > taken.Rank) return new Wording("ranks behind the way taken");
        if (other.Key.Waiting > decision.Key.Waiting) return new Wording("leads to a choice of which no way is known to be open");
        if (DecisionKey.CompareRanks(other.Key, decision.Key) > 0) return new Wording("leads to other ways that rank behind");
        if (option.Rank < taken.Rank) return new Wording("leads to steps that cannot be put in order");
        var theirs = With(other.Cost);
        return decision.Cost.CompareTo(other.Cost) switch
        {
            0 => new Wording("takes as long; the first in the packs is taken"),
            < 0 when decision.Cost.Twice == other.Cost.Twice && labour == theirs => new Wording("takes as long, but what it may ask for on the way takes longer"),
            < 0 when decision.Cost.Twice == other.Cost.Twice => new Wording(units => $"likely takes as long, but less surely: {theirs.ToDisplay(units)} against {labour.ToDisplay(units)}"),
            < 0 when labour.High > theirs.Low => new Wording(units => $"the whole job would likely take longer: {theirs.ToDisplay(units)} against {labour.ToDisplay(units)}, which overlap"),
            < 0 => new Wording(units => $"the whole job would take longer: {theirs.ToDisplay(units)} against {labour.ToDisplay(units)}"),
            _ => new Wording("leads to steps that cannot be put in order"),
        };
    }

    private Wording Text(ChoiceKey key, ChoiceOption option)
    {
        if (option.Option is { } written && key is ChoiceKey.OfRule rule) return new Wording(written.Text, _beliefs, rule.Binding);
        var step = option.Records.SelectMany(record => record.Effects).Select(effect => effect.Atom).OfType<Atom.Occurs>().FirstOrDefault()?.Step;
        return step is null ? new Wording("another way") : Words.Instruction(_beliefs, step);
    }
}
