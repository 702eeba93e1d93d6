using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Quantities;

namespace ProcedureRules.Planning;

/// <summary>Writes down the choices made, with what each way not taken would have cost or why it is not open.</summary>
internal sealed class ChoiceWriter(Decision decision, ChoiceBook book, PlannerOptions options, Reasons reasons, CancellationToken cancellation)
{
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
            .OrderBy(support => RecordName.Of(support.Record), StringComparer.Ordinal)
            .Select(support => reasons.Of(support.Record)).Take(3).ToList();
        return new PlanChoice
        {
            Key = key,
            Text = new Wording(Words.Choice(key)),
            Taken = taken,
            Ways = [.. book.Options(key).Select(option => Write(key, option, book.Options(key)[taken]))],
            Because = because,
        };
    }

    private PlanChoice.Way Write(ChoiceKey key, ChoiceOption option, ChoiceOption taken)
    {
        var text = Text(key, option);
        if (option.Index == taken.Index) return new PlanChoice.Way(text, option.Rank, Labour(decision.Cost), null);
        var binding = (key as ChoiceKey.OfRule)?.Binding;
        var isOpen = option.IsOpen(_beliefs, binding);
        var condition = option.Option?.If is { } test && option.Records.Count > 0 ? Words.Condition(option.Records[0], test) : option.Option?.If?.Text ?? "";
        if (isOpen == Truth.No) return new PlanChoice.Way(text, option.Rank, null, new Wording($"not open here: it takes {condition}"));

        var there = _beliefs.With([new Supposition.Takes(key, option.Index)]);
        if (isOpen == Truth.Unknown) there = Answered(there, option, binding!);
        var other = new Chooser(book, options with { MostHypotheses = 64 }, cancellation).From(there).FirstOrDefault();
        if (other is null) return new PlanChoice.Way(text, option.Rank, null, new Wording("no way on from there"));
        var labour = Labour(other.Cost);
        if (isOpen == Truth.Unknown) return new PlanChoice.Way(text, option.Rank, labour, new Wording(units => $"open only if {condition}; the whole job would take {labour.ToDisplay(units)}"));
        if (other.Faults.Count > 0) return new PlanChoice.Way(text, option.Rank, labour, Why(other.Faults[0], option));
        return new PlanChoice.Way(text, option.Rank, labour, Compare(option, taken, other.Cost));
    }

    // A way that is forbidden itself says only why; one that leads to something forbidden says what that is.
    private Wording Why(Fault fault, ChoiceOption option)
    {
        var reason = reasons.Of(fault.Record);
        var isItself = option.Records.Any(record => record.Effects.Any(effect => fault.Atom is not null && fault.Atom.Equals(effect.Atom)));
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

    private Wording Compare(ChoiceOption option, ChoiceOption taken, Cost other)
    {
        if (option.Rank > taken.Rank) return new Wording("ranks behind the way taken");
        if (option.Rank < taken.Rank) return new Wording("leads to steps that cannot be put in order");
        var (mine, theirs) = (Labour(decision.Cost), Labour(other));
        return decision.Cost.CompareTo(other) switch
        {
            0 => new Wording("takes as long; the first in the packs is taken"),
            < 0 when mine.High > theirs.Low => new Wording(units => $"the whole job would likely take longer: {theirs.ToDisplay(units)} against {mine.ToDisplay(units)}, which overlap"),
            < 0 => new Wording(units => $"the whole job would take longer: {theirs.ToDisplay(units)} against {mine.ToDisplay(units)}"),
            _ => new Wording("leads to steps that cannot be put in order"),
        };
    }

    private Wording Text(ChoiceKey key, ChoiceOption option)
    {
        if (option.Option is { } written && key is ChoiceKey.OfRule rule) return new Wording(written.Text, _beliefs, rule.Binding);
        var step = option.Records.SelectMany(record => record.Effects).Select(effect => effect.Atom).OfType<Atom.Occurs>().FirstOrDefault()?.Step;
        return step is null ? new Wording("another way") : Words.Instruction(_beliefs, step);
    }

    private static Quantity Labour(Cost cost) => Quantity.Between(Math.Min(cost.Least, cost.Most), cost.Most, Dimension.Duration);
}
