using ProcedureRules.Beliefs;
using ProcedureRules.Choosing;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Plans;

namespace ProcedureRules.Asking;

/// <summary>
/// Finds what hangs on what is not known: what is read by a condition that is neither true nor false behind a step, a way, a caution, a hold
/// or a stop, and the figures without which a step is not done.
/// </summary>
internal sealed class MatterFinder
{
    private readonly BeliefState _beliefs;
    private readonly Openness _openness;
    private readonly Settling _settling;
    private readonly Prohibitions _prohibitions;
    private readonly List<Matter> _found = [];

    private MatterFinder(BeliefState beliefs, Settling settling)
    {
        (_beliefs, _settling) = (beliefs, settling);
        _openness = new Openness(beliefs);
        _prohibitions = new Prohibitions(beliefs);
    }

    /// <summary>What is open about a step.</summary>
    public static IReadOnlyList<Matter> Of(BeliefState beliefs, Settling settling, Step step)
    {
        var finder = new MatterFinder(beliefs, settling);
        finder.AskOf(step);
        return finder._found;
    }

    /// <summary>What is open about the choices and about the job as a whole.</summary>
    public static IReadOnlyList<Matter> OfTheWhole(BeliefState beliefs, Settling settling, ChoiceBook book, IReadOnlyList<RecordEffect> held)
    {
        var finder = new MatterFinder(beliefs, settling);
        finder.AskOfChoices(book);
        finder.AskOfHeld(held);
        finder.AskOfTheWhole();
        finder.AskOfDoubts();
        return finder._found;
    }

    private void AskOf(Step step)
    {
        var atom = new Atom.Occurs(step);
        var name = Words.Instruction(_beliefs, step);
        var level = _beliefs.Available(atom);
        if (level is not (Assurance.No or Assurance.Sure))
            foreach (var (_, readings) in _settling.Of(atom))
                Add(readings, Urgency.Work, new Wording(units => $"whether this is needed: {name.In(units)}"), (0, step), step);
        foreach (var source in _prohibitions.Waiting(step))
            foreach (var (_, readings) in _settling.Of(source))
                Add(readings, Urgency.Safety, WhetherAllowed(name), (source.Effect.Conclusion!, step), step);
        foreach (var (source, _) in _beliefs.SaidOf(step))
        {
            var record = source.Record;
            switch (source.Effect.Conclusion)
            {
                case Conclusion.Figure figure when IsAbout(record, figure.Step, step):
                    AskFigure(new FactKey(record.Binding.Part(figure.Slot), figure.Fact), step, new Wording(units => $"a figure for: {name.In(units)}"), (1, step), record);
                    continue;
                case Conclusion.Wait wait when IsAbout(record, wait.Until, step):
                    Add(Reads(wait, record), Urgency.Other, new Wording(units => $"how long to wait before: {name.In(units)}"), (3, step), step, isCondition: false, record);
                    break;
                case Conclusion.Check check when IsAbout(record, check.Step, step) && check.Limits.Evaluate(_beliefs, record.Binding) == Truth.Unknown:
                    Add(check.Limits.Reads(record.Binding, _beliefs.PartsOf), Urgency.Other, new Wording(units => $"a check at: {name.In(units)}"), (2, step), step, isCondition: false, record);
                    break;
            }
            var unknown = UnknownReads(record);
            if (unknown.Count == 0) continue;
            var (urgency, matter) = Matter(source, name);
            Add(unknown, urgency, matter, (source.Effect.Conclusion!, step), step, rests: record);
        }
    }

    private IEnumerable<Reading> Reads(Conclusion.Wait wait, Record record)
    {
        foreach (var reading in wait.Least?.Reads(record.Binding, _beliefs.PartsOf) ?? []) yield return reading;
        foreach (var reading in wait.Most?.Reads(record.Binding, _beliefs.PartsOf) ?? []) yield return reading;
        if (wait.Since is { } since) yield return new Reading.OfFact(new FactKey(record.Binding.Part(since.Slot), since.Fact));
    }

    private (Urgency, Wording) Matter(RecordEffect source, Wording step) => source.Effect.Conclusion switch
    {
        Conclusion.Caution { Signal: >= Signal.Warning } caution => (Urgency.Safety, About("a warning", caution.Text, source)),
        Conclusion.Caution caution => (Urgency.Other, About("a caution", caution.Text, source)),
        Conclusion.ForbidStep => (Urgency.Safety, WhetherAllowed(step)),
        Conclusion.Need need => (Urgency.Work, new Wording(units =>
            $"whether {Words.State(new GroundState(source.Record.Binding.Part(need.State.Slot), need.State.Aspect, need.State.States))} is needed for: {step.In(units)}")),
        Conclusion.Order => (Urgency.Other, new Wording(units => $"the order around: {step.In(units)}")),
        _ => (Urgency.Other, new Wording(units => $"what goes with: {step.In(units)}")),
    };

    private (Urgency, Wording) AboutStop(Conclusion.Stop stop, RecordEffect source) => (Urgency.Safety, About("a stop", stop.Text, source));

    private static Wording WhetherAllowed(Wording step) => new(units => $"whether this may be done: {step.In(units)}");

    private Wording About(string what, Template text, RecordEffect source)
    {
        var words = new Wording(text, _beliefs, source.Record.Binding);
        return new Wording(units => $"whether {what} applies: {words.In(units)}");
    }

    private void AskOfChoices(ChoiceBook book)
    {
        foreach (var key in book.Keys)
        {
            var open = new Atom.Open(key);
            if (_beliefs.Required(open) >= Assurance.Provisional)
                foreach (var option in book.Options(key)) AskWhetherForbidden(option);
            if (_beliefs.Available(open) == Assurance.No || key is not ChoiceKey.OfRule rule) continue;
            // A choice at a step that is not in the plan is nobody's.
            var rests = _beliefs.Network.RecordsSupporting(open)[0].Record;
            foreach (var option in book.Options(key))
            {
                if (option.Option?.If is not { } condition || condition.Evaluate(_beliefs, rule.Binding) != Truth.Unknown) continue;
                var text = new Wording(option.Option.Text, _beliefs, rule.Binding);
                Add(condition.Reads(rule.Binding, _beliefs.PartsOf), Urgency.Work, new Wording(units => $"whether this way is open: {text.In(units)}"), option, null, isCondition: false, rests);
            }
            foreach (var (_, readings) in _settling.Of(open))
                Add(readings, Urgency.Work, new Wording($"whether this comes up: {Words.Choice(key)}"), key, null, rests: rests);
        }
    }

    // A way is kept from while it may be forbidden; an answer may open it.
    private void AskWhetherForbidden(ChoiceOption option)
    {
        foreach (var step in option.Steps)
            if (_prohibitions.Of(step) is { } source && UnknownReads(source.Record) is { Count: > 0 } unknown)
                Add(unknown, Urgency.Work, new Wording(units => $"whether this way is open: {Words.Instruction(_beliefs, step, units)}"), option, null);
    }

    private void AskOfHeld(IReadOnlyList<RecordEffect> held)
    {
        foreach (var source in held)
        {
            var (urgency, matter) = source.Effect.Conclusion is Conclusion.Stop stop
                ? AboutStop(stop, source)
                : (Urgency.Work, new Wording(units => $"whether this is done: {HoldFinder.What(_beliefs, source).In(units)}"));
            foreach (var (_, readings) in _settling.Of(source)) Add(readings, urgency, matter, source, null);
        }
    }

    private void AskOfTheWhole()
    {
        foreach (var source in OverAll.Of(_beliefs))
        {
            if (_beliefs.Available(source.Record, source.Index) == Assurance.No) continue;
            var binding = source.Record.Binding;
            if (source.Effect.Conclusion is Conclusion.Know know)
            {
                AskFigure(new FactKey(binding.Part(know.Slot), know.Fact), null, new Wording("the job has to know it"), 3);
                continue;
            }
            var unknown = UnknownReads(source.Record);
            if (unknown.Count == 0) continue;
            var (urgency, matter) = source.Effect.Conclusion switch
            {
                Conclusion.Stop stop => AboutStop(stop, source),
                Conclusion.Caution { Signal: >= Signal.Warning } caution => (Urgency.Safety, About("a warning", caution.Text, source)),
                Conclusion.Caution caution => (Urgency.Other, About("a caution", caution.Text, source)),
                Conclusion.ForbidWork or Conclusion.ForbidState => (Urgency.Safety, new Wording($"whether something may be done: {source.Record.Rule?.Title}")),
                Conclusion.Finding finding => (Urgency.Other, new Wording($"whether it is so: {Words.Name(finding.Cause.Name)}")),
                Conclusion.Supply supply => (Urgency.Other, About("a supply", supply.Text, source)),
                Conclusion.Tool tool => (Urgency.Other, About("a tool", tool.Text, source)),
                _ => ((Urgency?)null, (Wording?)null),
            };
            if (urgency is { } asked) Add(unknown, asked, matter!, source.Effect.Conclusion!, null);
        }
    }

    // Whether anything reads it or not: whoever stated it believes that it was taken.
    private void AskOfDoubts()
    {
        foreach (var doubt in _beliefs.Network.Result.Situation.Doubts)
            Note([new Reading.OfFact(doubt.Fact)], Urgency.Safety, new Wording("what was stated is outside what occurs"), doubt, null, isCondition: false);
    }

    // Estimates and assumptions are asked again: a figure is not tightened to a guess.
    private void AskFigure(FactKey key, Step? step, Wording matter, object subject, Record? rests = null)
    {
        if (_beliefs.SourceOf(key) >= Source.Stated) return;
        var reading = new Reading.OfFact(key);
        if (key.Fact.IsDerived) Add([reading], Urgency.Figure, matter, subject, step, isCondition: false, rests);
        else Note([reading], Urgency.Figure, matter, subject, step, isCondition: false, rests);
    }

    private List<Reading> UnknownReads(Record record)
    {
        var reads = new List<Reading>();
        for (var i = 0; i < record.Tests.Count; i++)
            if (_beliefs.TruthOf(record, i) == Truth.Unknown) reads.AddRange(record.Tests[i].Reads(record.Binding, _beliefs.PartsOf));
        return reads;
    }

    private void Add(IEnumerable<Reading> readings, Urgency urgency, Wording text, object subject, Step? step, bool isCondition = true, Record? rests = null) =>
        Note(_openness.Behind(readings), urgency, text, subject, step, isCondition, rests);

    private void Note(IReadOnlyList<Reading> open, Urgency urgency, Wording text, object subject, Step? step, bool isCondition, Record? rests = null)
    {
        if (open.Count > 0) _found.Add(new Matter(rests, open, urgency, text, subject, step, isCondition));
    }

    private static bool IsAbout(Record record, int slot, Step step) => slot >= 0 && record.Binding.Step(slot).Equals(step);
}
