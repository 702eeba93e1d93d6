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

/// <summary>
/// Makes the steps of a plan from an order: what belongs to each occurrence is read from the records about its step, with moments judged in
/// the states at that occurrence.
/// </summary>
internal sealed class Attacher(World world, IReadOnlyList<Occurrence> occurrences, Reasons reasons, Settling settling, IReadOnlyList<PlanQuestion> questions)
{
    private readonly BeliefState _beliefs = world.Beliefs;
    private readonly Together _together = new(occurrences.Select(occurrence => occurrence.Work.Step));

    /// <summary>Tools met on the way.</summary>
    public ItemList Tools { get; } = new();

    /// <summary>Supplies met on the way.</summary>
    public ItemList Supplies { get; } = new();

    /// <summary>Offers met on the way.</summary>
    public ItemList Offers { get; } = new();

    /// <summary>The steps, in order; <paramref name="holds"/> are further holds by occurrence.</summary>
    public IReadOnlyList<PlanStep> Attach(IReadOnlyDictionary<int, List<PlanHold>> holds)
    {
        var predecessors = Predecessors.Of(world, occurrences);
        return [.. occurrences.Select(occurrence => Attach(occurrence, predecessors[occurrence.Index], holds))];
    }

    private PlanStep Attach(Occurrence occurrence, IReadOnlyList<int> after, IReadOnlyDictionary<int, List<PlanHold>> others)
    {
        var step = occurrence.Work.Step;
        var cautions = new List<PlanCaution>();
        var checks = new List<PlanCheck>();
        var waits = new List<PlanWait>();
        var detail = new List<Wording>();
        var holds = new List<PlanHold>();
        var slowed = new Slowness(_beliefs);
        var isFirm = Level(step) >= Assurance.Protective;
        foreach (var (source, level) in _beliefs.SaidOf(step).OrderBy(said => said.Source.Record.Name, StringComparer.Ordinal).ThenBy(said => said.Source.Index))
        {
            var (record, binding) = (source.Record, source.Record.Binding);
            if (!_together.Has(record) || (level == Assurance.Held && Waits(source.Effect.Conclusion))) continue;
            var isNow = Holds(record, occurrence.Before);
            switch (source.Effect.Conclusion)
            {
                // A caution is shown where its moments hold before the step or after it: on the way it passes through both.
                case Conclusion.Caution caution when Is(caution.Step, record, step) && (isNow || Holds(record, occurrence.After)):
                    Add(cautions, new PlanCaution(caution.Signal, Text(caution.Text, record), reasons.Of(record)), one => one.Text, one => one.Signal);
                    break;
                case Conclusion.Check check when isNow && Is(check.Step, record, step):
                    Add(checks, new PlanCheck(Text(check.Text, record), check.Limits.Evaluate(_beliefs, binding), check.During, reasons.Of(record)), one => one.Text, one => one.During);
                    break;
                case Conclusion.Detail line when isNow && Is(line.Step, record, step):
                    if (Text(line.Text, record) is var words && !detail.Any(words.IsSame)) detail.Add(words);
                    break;
                case Conclusion.Tool tool when isNow && Is(tool.Step, record, step):
                    Tools.Add(Text(tool.Text, record), occurrence.Id, isFirm && level == Assurance.Sure, reasons.Of(record));
                    break;
                case Conclusion.Supply supply when isNow && Is(supply.Step, record, step):
                    Supplies.Add(Text(supply.Text, record), occurrence.Id, isFirm && level == Assurance.Sure, reasons.Of(record));
                    break;
                case Conclusion.Slower slower when isNow && Is(slower.Step, record, step):
                    slowed.Add(slower, record, level == Assurance.Sure);
                    break;
                case Conclusion.Figure figure when isNow && Is(figure.Step, record, step):
                    if (Hold(new FactKey(binding.Part(figure.Slot), figure.Fact), record) is { } hold) holds.Add(hold);
                    break;
                case Conclusion.Wait wait when isNow && Is(wait.Until, record, step) && Wait(wait, record, occurrence) is { } found:
                    Add(waits, found, one => one.Text, one => one.AfterStep ?? "");
                    break;
            }
        }
        if (others.TryGetValue(occurrence.Index, out var more)) holds.AddRange(more);
        return new PlanStep
        {
            Id = occurrence.Id,
            Number = occurrence.Index + 1,
            Step = step,
            Text = Words.Instruction(_beliefs, step),
            Changes = Changes(occurrence),
            After = [.. after.Select(index => occurrences[index].Id)],
            Cautions = [.. cautions.OrderByDescending(caution => caution.Signal)],
            Checks = checks,
            Waits = waits,
            Because = new WhenRead<Reason>(() => [.. Because(occurrence), .. slowed.Records.Select(reasons.Of)]),
            Time = slowed.Of(step.Operation.Time),
            Detail = detail,
            Provisional = isFirm ? [] : Settle(step),
            Holds = holds,
        };
    }

    // A text that asks to be held says something only where it is sure; what guards people is said in any case.
    private static bool Waits(Conclusion? conclusion) => conclusion is Conclusion.Caution { Signal: Signal.Notice } or Conclusion.Detail or Conclusion.Slower;

    /// <summary>How firmly a step of the plan stands: as required, or as drawn in by a moment.</summary>
    public Assurance Level(Step step)
    {
        var atom = new Atom.Occurs(step);
        var required = _beliefs.Required(atom);
        if (required >= Assurance.Provisional) return required;
        var available = _beliefs.Available(atom);
        return available == Assurance.No ? Assurance.Sure : available;
    }

    private List<Wording> Settle(Step step)
    {
        var conditions = settling.Of(new Atom.Occurs(step)).Select(entry => entry.Text).ToList();
        return conditions.Count > 0 ? conditions : [new Wording("it turns out to be needed")];
    }

    private List<Reason> Because(Occurrence occurrence)
    {
        var because = reasons.OfStep(occurrence.Work.Step).ToList();
        foreach (var edge in occurrence.Work.Before)
        {
            if (edge.Source is not { Record: { Rule: { } rule } record } || !Guard.All(edge.Guards, occurrence.Before)) continue;
            var comesAfter = occurrences.Take(occurrence.Index).Any(other => ReferenceEquals(other.Work, edge.First));
            if (comesAfter && !because.Any(reason => ReferenceEquals(reason.Record.Rule, rule))) because.Add(reasons.Of(record));
        }
        return because;
    }

    private PlanWait? Wait(Conclusion.Wait wait, Record record, Occurrence occurrence)
    {
        var least = wait.Least?.Evaluate(_beliefs, record.Binding).Quantity;
        var most = wait.Most?.Evaluate(_beliefs, record.Binding).Quantity;
        string? from = null;
        Quantity? before = null;
        if (wait.Since is { } since)
        {
            var age = _beliefs.Fact(record.Binding.Part(since.Slot), since.Fact).Quantity;
            if (most is null && least is { } due && age.Low >= due.High) return null;
            before = age;
        }
        else
        {
            from = wait.From < 0 ? null
                : occurrences.Take(occurrence.Index).LastOrDefault(other => other.Work.Step.Equals(record.Binding.Step(wait.From)))?.Id;
            if (from is null) return null;
        }
        var text = wait.Text is { } template ? Text(template, record) : reasons.Of(record).Text;
        return new PlanWait(from, least, most, text, reasons.Of(record)) { Age = before };
    }

    private PlanHold? Hold(FactKey key, Record record)
    {
        if (_beliefs.SourceOf(key) >= Source.Stated) return null;
        var openness = new Openness(_beliefs).Behind([new Reading.OfFact(key)]).Select(QuestionWriter.IdOf).Append(key.ToString());
        var ids = questions.Select(question => question.Id).Where(openness.Contains).ToList();
        return new PlanHold(new Wording($"{key.Part.Text} {Words.Name(key.Fact.Name)} is not known: find it out before this step"), ids, reasons.Of(record));
    }

    private IReadOnlyList<(GroundState, GroundState)> Changes(Occurrence occurrence) =>
        [.. occurrence.Work.Shifts.Select(shift => shift.Variable).Distinct()
            .Where(variable => occurrence.Before[variable] != occurrence.After[variable])
            .Select(variable => (At(variable, occurrence.Before), At(variable, occurrence.After)))];

    private GroundState At(int variable, int[] state) =>
        new(world.Variables[variable].Part, world.Variables[variable].Aspect, Packs.StateSet.Of(state[variable]));

    private bool Holds(Record record, int[] state)
    {
        foreach (var moment in record.Moments)
            if (!moment.States.Has(world.StateOf(moment.Part, moment.Aspect, state))) return false;
        return true;
    }

    private Wording Text(Template template, Record record) => new(template, _beliefs, record.Binding);

    private static bool Is(int slot, Record record, Step step) => slot >= 0 && record.Binding.Step(slot).Equals(step);

    private static void Add<T>(List<T> list, T item, Func<T, Wording> text, Func<T, object> kind)
    {
        if (!list.Any(other => kind(other).Equals(kind(item)) && text(other).IsSame(text(item)))) list.Add(item);
    }
}
