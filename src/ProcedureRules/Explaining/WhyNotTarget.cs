using ProcedureRules.Beliefs;
using ProcedureRules.Choosing;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Plans;

namespace ProcedureRules.Explaining;

/// <summary>What is asked for: steps, or conclusions by words of their text; and which rules and records would give it.</summary>
internal sealed class WhyNotTarget
{
    private readonly IReadOnlyList<Step> _steps;
    private readonly string _words;
    private readonly BeliefState _beliefs;

    private WhyNotTarget(BeliefState beliefs, IReadOnlyList<Step> steps, string words) => (_beliefs, _steps, _words) = (beliefs, steps, words);

    /// <summary>The item in words.</summary>
    public Wording Text => _steps.Count > 0 ? Words.Instruction(_beliefs, _steps[0]) : new Wording(_words);

    /// <summary>What an item names; null where no operation and no text of a rule is called so.</summary>
    public static WhyNotTarget? Of(BeliefState beliefs, string item)
    {
        var situation = beliefs.Network.Result.Situation;
        var (name, part) = item.EndsWith(')') && item.IndexOf('(', StringComparison.Ordinal) is var at and > 0 ? (item[..at], item[(at + 1)..^1]) : (item, null);
        if (situation.Vocabulary.Operations.TryGetValue(name, out var operation))
        {
            var parts = situation.Parts.Where(one => one.Kind.IsA(operation.On) && (part is null || one.Name == part));
            var steps = parts.Select(one => new Step(operation, one)).ToList();
            return steps.Count > 0 ? new(beliefs, steps, item) : null;
        }

        var target = new WhyNotTarget(beliefs, [], item);
        return item.Length > 0 && target.RulesByWords().Any() ? target : null;
    }

    /// <summary>Whether a plan has it.</summary>
    public bool IsIn(Plan plan) => _steps.Count > 0 ? plan.Steps.Any(step => _steps.Contains(step.Step)) : Why.Has(plan, _words);

    /// <summary>Whether it can be in a plan under some beliefs: a quick look before planning.</summary>
    public bool IsWithinReach(BeliefState beliefs) => _steps.Count > 0
        ? new Prohibitions(beliefs) is var prohibitions && _steps.Any(step => beliefs.Available(new Atom.Occurs(step)) > Assurance.No && prohibitions.Of(step) is null)
        : Effects().Any(source => beliefs.Available(source.Record, source.Index) > Assurance.No);

    /// <summary>
    /// Whether it can be in any plan of some beliefs in which things are open. It cannot where nothing gives it even possibly, where something surely forbids
    /// it, or where another way is always better.
    /// </summary>
    public bool IsPossible(BeliefState open)
    {
        if (_steps.Count == 0) return IsWithinReach(open);
        var outdone = new OutdoneWays(open);
        return _steps.Any(step => open.Available(new Atom.Occurs(step)) > Assurance.No && !Forbidding([step]).Any(source => IsSureAlways(source, step, open)) && !outdone.Has(step));
    }

    private static bool IsSureAlways(RecordEffect source, Step step, BeliefState open) => source.Record.Moments.Count == 0
        && (source.Effect.Conclusion is Conclusion.ForbidStep ? open.Given(source.Record, source.Index, step) : open.Required(source.Record, source.Index)) == Assurance.Sure;

    /// <summary>The records of rules that would give it.</summary>
    public IReadOnlyList<Record> Records()
    {
        if (_steps.Count == 0) return [.. Effects().Select(source => source.Record).Distinct()];
        var found = new List<Record>();
        var seen = new HashSet<Atom>();
        var open = new Queue<Atom>(_steps.Select(step => new Atom.Occurs(step)));
        while (open.TryDequeue(out var atom))
        {
            if (!seen.Add(atom)) continue;
            foreach (var support in _beliefs.Network.RecordsSupporting(atom))
            {
                if (support.Record.Rule is not null)
                {
                    if (!found.Contains(support.Record)) found.Add(support.Record);
                }
                else
                {
                    // What undoes a step comes in with that step.
                    foreach (var premise in support.Record.Premises.Where(premise => premise is Atom.Wanted or Atom.Open || (premise is Atom.Occurs && support.Record.Mechanism == Mechanism.Undo)))
                        open.Enqueue(premise);
                }
            }
        }

        return found;
    }

    /// <summary>The rules that would give it if the vehicle had what they speak of.</summary>
    public IEnumerable<CompiledRule> Rules() => _steps.Count == 0 ? RulesByWords() : _beliefs.Network.Result.Rules.Rules.Where(rule => All(rule.Conclusions).Any(Gives));

    /// <summary>Why the plan took other ways than these steps.</summary>
    public IReadOnlyList<Wording> NotTaken(Plan plan)
    {
        var texts = _steps.Select(step => Words.Instruction(_beliefs, step).ToString()).ToHashSet();
        return
        [
            .. from choice in plan.Choices
               from way in choice.Ways
               where way.WhyNot is not null && texts.Contains(way.Text.ToString())
               select new Wording(units => $"{choice.Text.In(units)}: {choice.Ways[choice.Taken].Text.In(units)} was chosen; {way.WhyNot!.In(units)}"),
        ];
    }

    /// <summary>The effects that forbid these steps, or may.</summary>
    public IEnumerable<RecordEffect> Forbidding() => Forbidding(_steps);

    /// <summary>The effects that forbid the other ways to what these steps reach, or may.</summary>
    public IEnumerable<RecordEffect> ForbiddingRivals() => Forbidding([.. _steps.SelectMany(Rivals).Distinct()]);

    private IEnumerable<Step> Rivals(Step step) =>
        from support in _beliefs.Network.RecordsSupporting(new Atom.Occurs(step))
        where support.Record.Mechanism == Mechanism.Alternative
        from open in support.Record.Premises.OfType<Atom.Open>()
        from record in _beliefs.Network.Records
        where record.Mechanism == Mechanism.Alternative && record.Premises.Contains(open)
        from effect in record.Effects
        where effect.Atom is Atom.Occurs occurs && !_steps.Contains(occurs.Step)
        select ((Atom.Occurs)effect.Atom!).Step;

    private IEnumerable<RecordEffect> Forbidding(IReadOnlyList<Step> steps) =>
        _beliefs.Network.RecordsWith<Conclusion.ForbidWork>().Where(source =>
                source.Effect.Conclusion is Conclusion.ForbidWork forbid && steps.Contains(new Step(forbid.Operation, source.Record.Binding.Part(forbid.Slot))))
            .Concat(_beliefs.Network.RecordsWith<Conclusion.ForbidStep>().Where(source =>
                steps.Contains(source.Record.Binding.Step(((Conclusion.ForbidStep)source.Effect.Conclusion!).Step))))
            .Concat(_beliefs.Network.RecordsWith<Conclusion.ForbidState>().Where(source =>
                source.Effect.Conclusion is Conclusion.ForbidState { State: var state } && steps.Any(step => step.Part == source.Record.Binding.Part(state.Slot) && Reaches(step, state))));

    private IEnumerable<RecordEffect> Effects() =>
        from record in _beliefs.Network.Records
        from index in Enumerable.Range(0, record.Effects.Count)
        where record.Effects[index].Conclusion is { } conclusion && HasWords(conclusion)
        select new RecordEffect(record, index);

    private IEnumerable<CompiledRule> RulesByWords() => _beliefs.Network.Result.Rules.Rules.Where(rule => All(rule.Conclusions).Any(HasWords));

    private bool HasWords(Conclusion conclusion) => (conclusion switch
    {
        Conclusion.Caution caution => caution.Text,
        Conclusion.Check check => check.Text,
        Conclusion.Supply supply => supply.Text,
        Conclusion.Tool tool => tool.Text,
        Conclusion.Detail detail => detail.Text,
        Conclusion.Stop stop => stop.Text,
        Conclusion.Offer offer => offer.Text,
        Conclusion.Wait wait => wait.Text,
        Conclusion.Finding finding => _beliefs.Network.Result.Rules.Causes.GetValueOrDefault(finding.Cause),
        _ => null,
    })?.Text.Contains(_words, StringComparison.OrdinalIgnoreCase) == true;

    private bool Gives(Conclusion conclusion) => conclusion switch
    {
        Conclusion.Do work => _steps.Any(step => ReferenceEquals(step.Operation, work.Operation)),
        Conclusion.Need need => _steps.Any(step => Reaches(step, need.State)),
        Conclusion.Waypoints pass => pass.States.Any(state => _steps.Any(step => Reaches(step, state))),
        _ => false,
    };

    private static bool Reaches(Step step, StateCondition state) =>
        step.Operation.Changes.Any(change => ReferenceEquals(change.Aspect, state.Aspect) && change.To >= 0 && state.States.Has(change.To));

    private static IEnumerable<Conclusion> All(IEnumerable<Conclusion> conclusions) => conclusions.SelectMany(conclusion =>
        conclusion is Conclusion.OneOf choice ? All(choice.Options.SelectMany(option => option.Then)).Prepend(conclusion) : [conclusion]);
}
