using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Packs;

namespace ProcedureRules.Inference;

/// <summary>
/// What follows from one atom without any rule: a wanted state brings the step that reaches it, a step the states it starts from and the
/// step that undoes it, an open choice its options. Knows no trade.
/// </summary>
internal sealed class Mechanisms(RuleIndex index, StatesNow states, RecordMaker records)
{
    private readonly Ways _ways = new(index.Rules.Vocabulary);
    private readonly List<(Kind Kind, Operation Operation)> _finds = [.. index.Rules.Vocabulary.Facts
        .Where(fact => fact.FindOperation is not null && index.Rules.Vocabulary.Operations.ContainsKey(fact.FindOperation))
        .Select(fact => (fact.Kind, index.Rules.Vocabulary.Operations[fact.FindOperation!])).Distinct()];

    /// <summary>The records that follow from an atom under the states now.</summary>
    public IEnumerable<Record> From(Node node) => node.Atom switch
    {
        Atom.Exists exists => Arrivals(node, exists.Part).Concat(Finds(node, exists.Part)),
        Atom.Wanted wanted => Reach(node, wanted),
        Atom.Occurs occurs => Starts(node, occurs.Step).Concat(Undo(node, occurs.Step)),
        Atom.Open(ChoiceKey.OfWays choice) => Alternatives(node, choice),
        Atom.Open(ChoiceKey.OfRule choice) => choice.Options.Select((option, i) => records.OfOption(node, choice, option, i)),
        _ => [],
    };

    /// <summary>The states now that these records were made under.</summary>
    public static IEnumerable<StateVariable> StatesBehind(Node node) => node.Atom switch
    {
        Atom.Wanted wanted => [new(wanted.Part, wanted.Aspect)],
        Atom.Occurs(var step) => step.Operation.Changes.Select(change => new StateVariable(step.Part, change.Aspect)),
        Atom.Open(ChoiceKey.OfWays choice) => [new(choice.Part, choice.Aspect)],
        _ => [],
    };

    private IEnumerable<Record> Arrivals(Node node, Part part) => states.ChangedAspectsOf(part)
        .Where(aspect => !aspect.IsMark)
        .Select(aspect => records.Of(Mechanism.Arrival, node, part, new Atom.Wanted(part, aspect, StateSet.Of(aspect.Normal))));

    private IEnumerable<Record> Finds(Node node, Part part) => _finds
        .Where(find => part.Kind.IsA(find.Kind) && part.Kind.IsA(find.Operation.On))
        .Select(find => records.Of(Mechanism.Find, node, part, new Atom.Occurs(new Step(find.Operation, part))));

    private IEnumerable<Record> Reach(Node node, Atom.Wanted wanted)
    {
        var (part, aspect, wantedStates) = wanted;
        var now = states[part, aspect];
        if (wantedStates.Has(now)) return [];
        var ways = _ways.To(part.Kind, aspect, wantedStates, now);
        return ways.Count switch
        {
            0 => [],
            1 => [records.Of(Mechanism.Reach, node, part, new Atom.Occurs(new Step(ways[0], part)))],
            _ => [records.Of(Mechanism.Reach, node, part, new Atom.Open(new ChoiceKey.OfWays(part, aspect, wantedStates)))],
        };
    }

    private IEnumerable<Record> Alternatives(Node node, ChoiceKey.OfWays choice) => _ways
        .To(choice.Part.Kind, choice.Aspect, choice.States, states[choice.Part, choice.Aspect])
        .Select((way, i) => records.OfAlternative(node, choice, i, new Atom.Occurs(new Step(way, choice.Part))));

    private IEnumerable<Record> Starts(Node node, Step step)
    {
        foreach (var change in step.Operation.Changes)
        {
            // An undoing step starts from where its step led: that brings no work of its own.
            var undone = step.Operation.Undoes?.Changes.FirstOrDefault(other => ReferenceEquals(other.Aspect, change.Aspect));
            if (undone is { To: >= 0 } && change.From.Has(undone.To)) continue;
            if (!change.From.Has(states[step.Part, change.Aspect]))
                yield return records.Of(Mechanism.Start, node, step, new Atom.Wanted(step.Part, change.Aspect, change.From));
        }
    }

    private IEnumerable<Record> Undo(Node node, Step step) => step.Operation.UndoneBy is { } undoing
        ? [records.Of(Mechanism.Undo, node, step, new Atom.Occurs(new Step(undoing, step.Part)))]
        : [];
}
