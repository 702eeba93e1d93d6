using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;

namespace ProcedureRules.Asking;

/// <summary>What it takes to find something out: the step itself, and the steps that bring about what it needs and what is not so now.</summary>
internal sealed class FindingWork(BeliefState beliefs)
{
    private readonly ILookup<Atom, Record> _consequences = beliefs.Network.Records
        .Where(record => record.Mechanism is Mechanism.Reach or Mechanism.Alternative or Mechanism.Start)
        .SelectMany(record => record.Premises.Select(premise => (premise, record)))
        .ToLookup(entry => entry.premise, entry => entry.record);

    /// <summary>The labour, and the steps that come before the finding itself.</summary>
    public (Quantity Labour, IReadOnlyList<Step> Before) Of(Reading reading)
    {
        var steps = Steps(reading);
        return (steps.Aggregate(Quantity.Point(0, Dimension.Duration), (sum, step) => sum + step.Operation.Labour), [.. steps.SkipLast(1)]);
    }

    /// <summary>The tools that it takes.</summary>
    public IReadOnlyList<Wording> Tools(Reading reading) =>
    [
        .. (from step in Steps(reading)
            from said in beliefs.SaidOf(step)
            let source = said.Source
            where source.Effect.Conclusion is Conclusion.Tool { Step: >= 0 } tool && source.Record.Binding.Step(tool.Step).Equals(step)
            select new Wording(((Conclusion.Tool)source.Effect.Conclusion!).Text, beliefs, source.Record.Binding)).DistinctBy(tool => tool.ToString()),
    ];

    private List<Step> Steps(Reading reading)
    {
        var steps = new List<Step>();
        if (reading is Reading.OfFact { Key: var key } && key.Fact.FindOperation is { } name
            && beliefs.Network.Result.Rules.Vocabulary.Operations.TryGetValue(name, out var operation)) Add(new Step(operation, key.Part), steps, []);
        return steps;
    }

    private void Add(Step step, List<Step> steps, HashSet<Step> seen)
    {
        if (!seen.Add(step)) return;
        foreach (var (source, level) in beliefs.SaidOf(step))
            if (level >= Assurance.Provisional && IsUnmetNeed(source, step) && source.Effect.Atom is { } wanted) Follow(wanted, steps, seen);
        steps.Add(step);
    }

    private bool IsUnmetNeed(RecordEffect source, Step step)
    {
        if (source.Effect.Conclusion is not Conclusion.Need { Step: >= 0 } need || !source.Record.Binding.Step(need.Step).Equals(step)) return false;
        var situation = beliefs.Network.Result.Situation;
        return source.Record.Moments.All(moment => moment.States.Has(situation.StateNow(moment.Part, moment.Aspect)))
            && !need.State.States.Has(situation.StateNow(source.Record.Binding.Part(need.State.Slot), need.State.Aspect));
    }

    // Of several ways the one of least labour counts: it says how little it can take.
    private void Follow(Atom atom, List<Step> steps, HashSet<Step> seen)
    {
        var next = _consequences[atom].SelectMany(record => record.Effects).Select(effect => effect.Atom).OfType<Atom>().ToList();
        var ways = next.OfType<Atom.Open>().SelectMany(open => _consequences[open]).SelectMany(record => record.Effects).Select(effect => effect.Atom)
            .Concat(next).OfType<Atom.Occurs>().Select(occurs => occurs.Step).ToList();
        if (ways.Count > 0) Add(ways.MinBy(way => way.Operation.Labour.High)!, steps, seen);
    }
}
