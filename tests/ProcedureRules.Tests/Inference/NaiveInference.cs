using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Packs;

namespace ProcedureRules.Tests.Inference;

/// <summary>
/// The meaning of inference by the plainest means: nested loops over all bindings, again and again until nothing new comes. Shares no code
/// with the matcher; slow, and meant to be read.
/// </summary>
internal sealed class NaiveInference
{
    private readonly RuleBase _rules;
    private readonly Situation _situation;
    private readonly HashSet<Atom> _atoms = [];
    private HashSet<(Predicate, object?, object?)> _facts = [];

    public NaiveInference(RuleBase rules, Situation situation)
    {
        _rules = rules;
        _situation = situation;
        foreach (var part in situation.Parts) _atoms.Add(new Atom.Exists(part));
        foreach (var statement in situation.Relations) _atoms.Add(new Atom.Related(statement.Relation, statement.A, statement.B));
        foreach (var request in situation.Jobs) _atoms.Add(new Atom.Asked(request));
        int before;
        do
        {
            before = _atoms.Count;
            _facts = [.. Facts()];
            Lines.Clear();
            foreach (var rule in rules.Rules) Match(rule);
            foreach (var atom in _atoms.ToList()) Follow(atom);
        }
        while (_atoms.Count > before);
    }

    /// <summary>The records, as <see cref="Described"/> writes them.</summary>
    public HashSet<string> Lines { get; } = [];

    /// <summary>The structural facts at the end.</summary>
    public IReadOnlyCollection<(Predicate Predicate, object? First, object? Second)> FinalFacts => _facts;

    private IEnumerable<Part> Parts => _atoms.OfType<Atom.Exists>().Select(atom => atom.Part);

    private IEnumerable<Step> Steps => _atoms.OfType<Atom.Occurs>().Select(atom => atom.Step);

    private IEnumerable<(Predicate, object?, object?)> Facts()
    {
        foreach (var part in Parts)
            foreach (var kind in part.Kind.Lineage())
                yield return (new(PredicateSort.Part, kind.Name), part, null);
        foreach (var (relation, a, b) in _atoms.OfType<Atom.Related>()) yield return (new(PredicateSort.Related, relation.Name), a, b);
        foreach (var (request, _) in _atoms.OfType<Atom.Asked>().Select(atom => (atom.Request, 0)))
            yield return (new(PredicateSort.Job, request.Job.Name), request.On, null);
        foreach (var step in Steps)
        {
            var operation = step.Operation;
            yield return (new(PredicateSort.Step), step, null);
            yield return (new(PredicateSort.Does, operation.Name), step, null);
            yield return (new(PredicateSort.On), step, step.Part);
            yield return (new(PredicateSort.Place, operation.Place), step, null);
            yield return (new(PredicateSort.Phase, operation.Phase == Phase.Back ? "back" : "apart"), step, null);
            foreach (var energy in operation.Energies) yield return (new(PredicateSort.Energy, energy), step, null);
            yield return (new(PredicateSort.Touches), step, step.Part);
            if (operation.MovesIt) yield return (new(PredicateSort.Moves), step, step.Part);
            foreach (var part in Parts)
            {
                if (operation.Touches.Any(part.Kind.IsA)) yield return (new(PredicateSort.Touches), step, part);
                if (operation.Moves.Any(part.Kind.IsA)) yield return (new(PredicateSort.Moves), step, part);
            }
            foreach (var change in operation.Changes)
            {
                int[] ends = change.To >= 0 ? [change.To] : [.. operation.Undoes!.Changes.Single().From.States()];
                foreach (var state in change.From.States())
                    if (ends is not [var only] || only != state)
                        yield return (new(PredicateSort.Leaves, change.Aspect.Name, change.Aspect.States[state]), step, step.Part);
                foreach (var state in ends)
                    yield return (new(PredicateSort.Reaches, change.Aspect.Name, change.Aspect.States[state]), step, step.Part);
            }
        }
    }

    private void Match(CompiledRule rule)
    {
        var items = new object[rule.Variables.Count];
        Bind(0);

        void Bind(int slot)
        {
            if (slot < items.Length)
            {
                var variable = rule.Variables[slot];
                IEnumerable<object> all = variable.Sort == Sort.Step ? Steps.ToList() : Parts.Where(part => part.Kind.IsA(variable.Kind!)).ToList();
                foreach (var item in all)
                {
                    items[slot] = item;
                    Bind(slot + 1);
                }
                return;
            }
            if (!rule.Patterns.All(Holds)) return;
            if (!rule.AtStart.All(state => state.States.Has(_situation.StateNow((Part)items[state.Slot], state.Aspect)))) return;
            var binding = new Binding([.. items]);
            Conclude("Rule", rule, binding, Premises(rule, binding), rule.Conclusions);
        }

        bool Holds(Pattern pattern) => _facts.Contains((pattern.Predicate, items[pattern.First], pattern.Second < 0 ? null : items[pattern.Second]));
    }

    private static IEnumerable<string> Premises(CompiledRule rule, Binding binding)
    {
        foreach (var pattern in rule.Patterns)
        {
            if (pattern.Predicate.Sort == PredicateSort.Related)
                yield return $"{pattern.Predicate.Name}({binding[pattern.First]}, {binding[pattern.Second]})";
            if (pattern.Predicate.Sort == PredicateSort.Job) yield return $"asked({pattern.Predicate.Name}, {binding[pattern.First]})";
        }
        for (var slot = 0; slot < binding.Count; slot++)
            yield return binding[slot] is Step step ? $"occurs({step})" : $"exists({binding[slot]})";
    }

    private void Conclude(string mechanism, CompiledRule rule, Binding binding, IEnumerable<string> premises, IReadOnlyList<Conclusion> conclusions)
    {
        var effects = new List<string>();
        foreach (var conclusion in conclusions)
        {
            Atom? atom = conclusion switch
            {
                Conclusion.Need need => new Atom.Wanted(binding.Part(need.State.Slot), need.State.Aspect, need.State.States),
                Conclusion.Do work => new Atom.Occurs(new Step(work.Operation, binding.Part(work.Slot))),
                Conclusion.Relate relate => new Atom.Related(relate.Relation, binding.Part(relate.First), binding.Part(relate.Second)),
                Conclusion.OneOf choice => new Atom.Open(new ChoiceKey.OfRule(rule, binding, AllChoices(rule).FindIndex(other => ReferenceEquals(other, choice)))),
                _ => null,
            };
            if (atom is not null) _atoms.Add(atom);
            effects.Add(atom is null ? conclusion.GetType().Name : Described.Of(atom));
        }
        Add($"{mechanism} {rule.Name}{Described.Of(binding)}", premises, effects);
    }

    /// <summary>By number: the rule's own first (other conclusions take their numbers), then those inside options, as written.</summary>
    private static List<Conclusion?> AllChoices(CompiledRule rule)
    {
        List<Conclusion?> all = [.. rule.Conclusions];
        foreach (var conclusion in rule.Conclusions) Collect(conclusion);
        return all;

        void Collect(Conclusion conclusion)
        {
            if (conclusion is not Conclusion.OneOf choice) return;
            foreach (var inner in choice.Options.SelectMany(option => option.Then).OfType<Conclusion.OneOf>())
            {
                all.Add(inner);
                Collect(inner);
            }
        }
    }

    private void Follow(Atom atom)
    {
        switch (atom)
        {
            case Atom.Exists(var part):
                foreach (var ((on, aspect), state) in _situation.States)
                    if (on == part && state != aspect.Normal && !aspect.IsMark)
                        Follow("Arrival", part, [atom], new Atom.Wanted(part, aspect, StateSet.Of(aspect.Normal)));
                foreach (var name in _situation.Vocabulary.Facts.Where(fact => part.Kind.IsA(fact.Kind)).Select(fact => fact.FindOperation).OfType<string>().Distinct())
                    if (_situation.Vocabulary.Operations.TryGetValue(name, out var find) && part.Kind.IsA(find.On))
                        Follow("Find", part, [atom], new Atom.Occurs(new Step(find, part)));
                break;
            case Atom.Wanted(var part, var aspect, var states) when !states.Has(_situation.StateNow(part, aspect)):
                var ways = Ways(part, aspect, states);
                if (ways.Count == 1) Follow("Reach", part, [atom], new Atom.Occurs(new Step(ways[0], part)));
                if (ways.Count > 1) Follow("Reach", part, [atom], new Atom.Open(new ChoiceKey.OfWays(part, aspect, states)));
                break;
            case Atom.Occurs(var step):
                foreach (var change in step.Operation.Changes)
                {
                    var undone = step.Operation.Undoes?.Changes.SingleOrDefault(other => other.Aspect == change.Aspect);
                    var comesFromItsStep = undone is not null && undone.To >= 0 && change.From.Has(undone.To);
                    if (!comesFromItsStep && !change.From.Has(_situation.StateNow(step.Part, change.Aspect)))
                        Follow("Start", step, [atom], new Atom.Wanted(step.Part, change.Aspect, change.From));
                }
                if (step.Operation.UndoneBy is { } undoing) Follow("Undo", step, [atom], new Atom.Occurs(new Step(undoing, step.Part)));
                break;
            case Atom.Open(ChoiceKey.OfWays choice):
                var alternatives = Ways(choice.Part, choice.Aspect, choice.States);
                for (var i = 0; i < alternatives.Count; i++)
                    Follow("Alternative", choice.Part, [atom, new Atom.Chosen(choice, i)], new Atom.Occurs(new Step(alternatives[i], choice.Part)));
                break;
            case Atom.Open(ChoiceKey.OfRule choice):
                var options = ((Conclusion.OneOf)AllChoices(choice.Rule)[choice.Conclusion]!).Options;
                for (var i = 0; i < options.Count; i++)
                    Conclude("Option", choice.Rule, choice.Binding, [Described.Of(atom), Described.Of(new Atom.Chosen(choice, i))], options[i].Then);
                break;
            default:
                break;
        }
    }

    private List<Operation> Ways(Part part, Aspect aspect, StateSet states)
    {
        var ways = _rules.Vocabulary.WaysTo(part.Kind, aspect, states).ToList();
        if (ways.Count == 0)
        {
            var undoing = _rules.Vocabulary.Operations.Values.Where(operation => operation.Undoes is not null && part.Kind.IsA(operation.On)
                && operation.Changes.Any(change => change.Aspect == aspect
                    && (change.To >= 0 ? states.Has(change.To) : operation.Undoes.Changes.Single().From.States().Any(states.Has)))).ToList();
            foreach (var kind in part.Kind.Lineage().Reverse())
                if (undoing.Any(operation => operation.On == kind)) ways = undoing.FindAll(operation => operation.On == kind);
        }
        var fromNow = ways.FindAll(way => way.Changes.Any(change => change.Aspect == aspect && change.From.Has(_situation.StateNow(part, aspect))));
        return fromNow.Count > 0 ? fromNow : ways;
    }

    private void Follow(string mechanism, object about, Atom[] premises, Atom concluded)
    {
        _atoms.Add(concluded);
        Add($"{mechanism} [{about}]", premises.Select(Described.Of), [Described.Of(concluded)]);
    }

    private void Add(string head, IEnumerable<string> premises, IEnumerable<string> effects) => Lines.Add(
        $"{head}: {string.Join(" & ", premises.Distinct().Order(StringComparer.Ordinal))} => {string.Join(" & ", effects)}");
}
