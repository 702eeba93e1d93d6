using ProcedureRules.Asking;
using ProcedureRules.Beliefs;
using ProcedureRules.Choosing;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Ordering;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;

namespace ProcedureRules.Planning;

/// <summary>Puts a draft together from an order of steps: what belongs to the steps, what is open, what holds, what was chosen.</summary>
internal sealed class Drafter(Decision decision, ChoiceBook book, Questioner questioner, PlannerOptions options)
{
    private readonly BeliefState _beliefs = decision.Beliefs;
    private readonly Situation _situation = decision.Beliefs.Network.Result.Situation;
    private Reasons _reasons = new(decision.Beliefs);

    /// <summary>The draft of an order.</summary>
    public PlanDraft Draft(World world, Moment end)
    {
        var occurrences = Occurrence.Upto(end);
        var steps = occurrences.Select(occurrence => occurrence.Work.Step).Distinct().ToList();
        _reasons = new Reasons(_beliefs, steps.ToHashSet());
        var questions = Write(questioner.Ask(steps), occurrences, new Together(steps).Has);
        var attacher = new Attacher(world, occurrences, _reasons, questioner.Settling, questions);
        var (placed, general) = Place(occurrences, questions);
        AddDoubts(placed, occurrences, questions);
        var planSteps = attacher.Attach(placed);
        AddHead(attacher);
        var labour = Labour(planSteps, attacher);
        return new PlanDraft
        {
            Situation = _situation,
            Beliefs = _beliefs,
            Steps = planSteps,
            Questions = questions,
            Cautions = HeadCautions(),
            Findings = FindingList.Of(_beliefs, _reasons),
            TellingChecks = TellingChecks.Of(_beliefs),
            Stops = _beliefs.IsTentative ? StopsOf(Faults.Of(_beliefs.Tentatively(false))) : [],
            Holds = general,
            Choices = new ChoiceWriter(decision, book, options, _reasons, labour).Write(occurrences),
            ChoicesBound = decision.Bound is { } seconds ? Quantity.Point(seconds, Dimension.Duration) : null,
            Tools = attacher.Tools.ToItems(),
            Supplies = attacher.Supplies.ToItems(),
            Offers = Offers(planSteps),
            Assumptions = new WhenRead<PlanItem>(() => AssumptionList.Of(_beliefs, occurrences)),
            Labour = labour,
        };
    }

    /// <summary>The draft of a job that cannot go on: no steps, why, and what is open.</summary>
    public PlanDraft Stopped(IReadOnlyList<Fault> faults)
    {
        // What may perhaps not be done is asked about, too: an answer may open the way.
        var doubtful = faults.Where(fault => !fault.IsSure).Select(fault => fault.Atom).OfType<Atom.Occurs>();
        var steps = _beliefs.Network.AtomsOf<Atom.Occurs>().Where(atom => _beliefs.Required(atom) >= Assurance.Provisional)
            .Concat(doubtful).Select(atom => atom.Step).Distinct().OrderBy(step => step.Name, StringComparer.Ordinal).ToList();
        return new PlanDraft
        {
            Situation = _situation,
            Beliefs = _beliefs,
            Stops = StopsOf(faults),
            Questions = Write(questioner.AskBefore(steps), [], Together.OrServing(_beliefs, steps)),
            Cautions = HeadCautions(),
            Findings = FindingList.Of(_beliefs, _reasons),
            TellingChecks = TellingChecks.Of(_beliefs),
        };
    }

    private IReadOnlyList<PlanStop> StopsOf(IReadOnlyList<Fault> faults) =>
        [.. faults.Select(fault => new PlanStop(fault.Text, fault.IsSure, _reasons.Of(fault.Record)))];

    // What may turn out to be forbidden is not begun before that is known; then there is another plan, or none.
    private void AddDoubts(Dictionary<int, List<PlanHold>> placed, IReadOnlyList<Occurrence> occurrences, IReadOnlyList<PlanQuestion> questions)
    {
        var prohibitions = new Prohibitions(_beliefs);
        var openness = new Openness(_beliefs);
        foreach (var occurrence in occurrences)
            foreach (var source in prohibitions.Waiting(occurrence.Work.Step))
            {
                var conditions = questioner.Settling.Of(source);
                var ids = openness.Behind(conditions.SelectMany(entry => entry.Readings)).Select(QuestionWriter.IdOf).ToHashSet();
                var text = new Wording(units => $"It may turn out that this may not be done: not before it is known whether {string.Join(", and whether ", conditions.Select(entry => entry.Text.In(units)))}. Then plan again.");
                Add(placed, occurrence.Index, new PlanHold(text, [.. questions.Where(question => ids.Contains(question.Id)).Select(question => question.Id)], _reasons.Of(source.Record), PlansAgain: true));
            }
    }

    private static void Add(Dictionary<int, List<PlanHold>> placed, int index, PlanHold hold)
    {
        if (placed.TryGetValue(index, out var list)) list.Add(hold);
        else placed[index] = [hold];
    }

    private List<PlanQuestion> Write(IReadOnlyList<Inquiry> inquiries, IReadOnlyList<Occurrence> occurrences, Func<Record, bool> counts)
    {
        Precedence.Settle(_beliefs, questioner.Settling, inquiries, about => QuestionWriter.At(_beliefs, about, occurrences) is not null, counts);
        return [.. inquiries.Select(inquiry => QuestionWriter.Write(_beliefs, inquiry, occurrences))];
    }

    // A hold stands at the step that it is about, or at the one that finds out what it waits for; otherwise it is over the whole.
    private (Dictionary<int, List<PlanHold>> Placed, List<PlanHold> General) Place(
        IReadOnlyList<Occurrence> occurrences, IReadOnlyList<PlanQuestion> questions)
    {
        var placed = new Dictionary<int, List<PlanHold>>();
        var general = new List<PlanHold>();
        var openness = new Openness(_beliefs);
        foreach (var (source, what, readings) in Waiting())
        {
            var ids = openness.Behind(readings).Select(QuestionWriter.IdOf).ToHashSet();
            var asked = questions.Where(question => ids.Contains(question.Id)).ToList();
            var hold = new PlanHold(what, [.. asked.Select(question => question.Id)], _reasons.Of(source.Record));
            var about = StepsOf(source.Record).ToHashSet();
            var at = occurrences.FirstOrDefault(occurrence => about.Contains(occurrence.Work.Step))
                ?? occurrences.FirstOrDefault(occurrence => asked.Any(question => question.AtStep == occurrence.Id));
            if (at is not null) Add(placed, at.Index, hold);
            else if (!(_beliefs.IsTentative && source.Effect.Conclusion is Conclusion.Stop)) general.Add(hold); // The head tells the stop itself.
        }
        return (placed, general);
    }

    private IEnumerable<(RecordEffect Source, Wording What, IReadOnlyList<Reading> Readings)> Waiting()
    {
        foreach (var source in questioner.Held)
        {
            var what = HoldFinder.What(_beliefs, source);
            var conditions = questioner.Settling.Of(source);
            var isStop = source.Effect.Conclusion is Conclusion.Stop;
            yield return (source, new Wording(units => isStop
                ? $"The job may stop here. If {string.Join(", and if ", conditions.Select(entry => entry.Text.In(units)))}, which is not known: {what.In(units)}"
                : $"{what.In(units)}: not decided until it is known whether {string.Join(", and whether ", conditions.Select(entry => entry.Text.In(units)))}"),
                [.. conditions.SelectMany(entry => entry.Readings)]);
        }
        foreach (var key in decision.Undecided)
        {
            var open = new Atom.Open(key);
            if (_beliefs.Required(open) < Assurance.Provisional || key is not ChoiceKey.OfRule rule) continue;
            var readings = book.Options(key).Where(option => option.Option?.If is not null).SelectMany(option => option.Option!.If!.Reads(rule.Binding, _beliefs.PartsOf));
            yield return (_beliefs.Network.RecordsSupporting(open)[0], new Wording($"{Words.Choice(key)}: which way is open is not known"), [.. readings]);
        }
    }

    private static IEnumerable<Step> StepsOf(Record record) =>
        Enumerable.Range(0, record.Binding.Count).Select(slot => record.Binding[slot]).OfType<Step>();

    private void AddHead(Attacher attacher)
    {
        foreach (var source in OverAll.Of(_beliefs))
        {
            var level = _beliefs.Available(source.Record, source.Index);
            if (level == Assurance.No) continue;
            if (source.Effect.Conclusion is Conclusion.Tool tool) attacher.Tools.Add(new Wording(tool.Text, _beliefs, source.Record.Binding), null, level == Assurance.Sure, _reasons.Of(source.Record));
            if (source.Effect.Conclusion is Conclusion.Supply supply) attacher.Supplies.Add(new Wording(supply.Text, _beliefs, source.Record.Binding), null, level == Assurance.Sure, _reasons.Of(source.Record));
        }
    }

    private List<PlanCaution> HeadCautions()
    {
        var cautions = new List<PlanCaution>();
        foreach (var source in _beliefs.Network.RecordsWith<Conclusion.Caution>().OrderBy(source => source.Record.Name, StringComparer.Ordinal))
        {
            if (source.Effect.Conclusion is not Conclusion.Caution { Step: < 0 } caution || _beliefs.Available(source.Record, source.Index) is var level && (level == Assurance.No || (level == Assurance.Held && caution.Signal == Signal.Notice))) continue;
            var text = new Wording(caution.Text, _beliefs, source.Record.Binding);
            if (!cautions.Any(other => other.Signal == caution.Signal && other.Text.IsSame(text)))
                cautions.Add(new PlanCaution(caution.Signal, text, _reasons.Of(source.Record)));
        }
        return [.. cautions.OrderByDescending(caution => caution.Signal)];
    }

    private IReadOnlyList<PlanItem> Offers(IReadOnlyList<PlanStep> steps)
    {
        var offers = new ItemList();
        var together = new Together(steps.Select(planned => planned.Step));
        foreach (var source in _beliefs.Network.RecordsWith<Conclusion.Offer>())
        {
            var level = _beliefs.Available(source.Record, source.Index);
            if (level <= Assurance.Held || !together.Has(source.Record)) continue;
            var offer = (Conclusion.Offer)source.Effect.Conclusion!;
            var step = new Step(offer.Operation, source.Record.Binding.Part(offer.Slot));
            if (steps.Any(planned => planned.Step.Equals(step))) continue;
            var text = offer.Text is { } template ? new Wording(template, _beliefs, source.Record.Binding) : Words.Instruction(_beliefs, step);
            var with = new Wording(units => $"{text.In(units)} ({offer.Operation.Labour.ToDisplay(units)} once it is in reach)");
            var at = StepsOf(source.Record).SelectMany(about => steps.Where(planned => planned.Step.Equals(about))).FirstOrDefault();
            offers.Add(with, at?.Id, level == Assurance.Sure, _reasons.Of(source.Record));
        }
        return offers.ToItems();
    }

    private static Quantity Labour(IReadOnlyList<PlanStep> steps, Attacher attacher)
    {
        double least = 0, most = 0;
        foreach (var step in steps)
        {
            if (attacher.Level(step.Step) >= Assurance.Protective) least += step.Labour.Low;
            most += step.Labour.High;
        }
        return Quantity.Between(least, Math.Max(least, most), Dimension.Duration);
    }
}
