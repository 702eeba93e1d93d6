using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;

namespace ProcedureRules.Plans;

/// <summary>Turns records into reasons, and finds those of a step: what wants it, and the words of its rules. Safe on many threads.</summary>
internal sealed class Reasons(BeliefState beliefs, IReadOnlySet<Step>? steps = null)
{
    private const int MostOfStep = 6;
    private readonly Grounds _grounds = new(beliefs, steps);
    private readonly Dictionary<Record, Reason> _reasons = [];
    private readonly Lock _reading = new();

    /// <summary>The reason that a record gives.</summary>
    public Reason Of(Record record)
    {
        lock (_reading)
        {
            if (!_reasons.TryGetValue(record, out var reason)) _reasons[record] = reason = Make(record);
            return reason;
        }
    }

    private Reason Make(Record record)
    {
        if (record.Rule is { } rule)
            return new Reason(rule.Title, rule.Pack, rule.Because is { } because ? new Wording(because, beliefs, record.Binding) : Bare(record), rule.Basis, record);
        var step = record.Premises.OfType<Atom.Occurs>().FirstOrDefault()?.Step;
        var (name, text) = record.Mechanism switch
        {
            Mechanism.Undo => ("put back", step is null ? new Wording("") : new Wording(units => $"It undoes \"{Words.Instruction(beliefs, step, units)}\".")),
            Mechanism.Start => ("starting state", step is null ? new Wording("") : SoThat(step)),
            Mechanism.Find => ("find out", new Wording("It is not known, and the plan hangs on it.")),
            Mechanism.Arrival => ("state on arrival", new Wording("It is not in its normal state on arrival.")),
            _ => ("needed", Wanted(record)),
        };
        return new Reason(name, step?.Operation.Pack ?? "", text, step?.Operation.Basis ?? "", record);
    }

    /// <summary>Why a step stands in the plan: the firmest and most direct reasons first.</summary>
    public IReadOnlyList<Reason> OfStep(Step step)
    {
        lock (_reading)
        {
            var reasons = new List<Reason>();
            foreach (var support in _grounds.Of(new Atom.Occurs(step)))
                foreach (var reason in Through(support, 4)) Add(reasons, reason);
            foreach (var own in beliefs.Network.RecordsAbout(step))
                if (own.Record.Rule is { Because: not null } rule && IsOwn(rule, step)) Add(reasons, Of(own.Record));
            return [.. reasons.Take(MostOfStep)];
        }
    }

    // A mechanism is not what a technician asks for: what wanted the state is.
    private IEnumerable<Reason> Through(RecordEffect support, int depth)
    {
        var record = support.Record;
        if (depth == 0 || record.Mechanism is not (Mechanism.Reach or Mechanism.Alternative)) return [Of(record)];
        var wanted = record.Premises.Where(premise => premise is Atom.Wanted or Atom.Open).ToList();
        return wanted.SelectMany(_grounds.Of).SelectMany(next => Through(next, depth - 1));
    }

    private static void Add(List<Reason> reasons, Reason reason)
    {
        if (!reasons.Any(other => ReferenceEquals(other, reason) || (other.Rule == reason.Rule && other.Text.IsSame(reason.Text)))) reasons.Add(reason);
    }

    private static bool IsOwn(CompiledRule rule, Step step) => rule.Name.StartsWith("operation ", StringComparison.Ordinal)
        && rule.Name[10..].StartsWith(step.Operation.Name, StringComparison.Ordinal);

    private Wording Bare(Record record)
    {
        var step = Enumerable.Range(0, record.Binding.Count).Select(slot => record.Binding[slot]).OfType<Step>().FirstOrDefault();
        if (step is not null) return SoThat(step);
        return record.Premises.Any(premise => premise is Atom.Asked) ? new Wording("The job asks for it.") : new Wording("");
    }

    private Wording SoThat(Step step) => new(units => $"So that this can be done: \"{Words.Instruction(beliefs, step, units)}\".");

    private static Wording Wanted(Record record) =>
        record.Premises.OfType<Atom.Wanted>().FirstOrDefault() is { } wanted
            ? new Wording($"{Words.State(new GroundState(wanted.Part, wanted.Aspect, wanted.States))} is wanted.")
            : new Wording("");
}
