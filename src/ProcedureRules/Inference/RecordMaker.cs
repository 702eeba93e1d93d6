using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Packs;

namespace ProcedureRules.Inference;

/// <summary>Makes the records of instances, with one object for each atom.</summary>
internal sealed class RecordMaker(NodeTable nodes)
{
    /// <summary>The record of a rule's instance.</summary>
    public Record OfRule(RuleInstance instance)
    {
        var rule = instance.Plan.Rule;
        return new Record
        {
            Mechanism = Mechanism.Rule,
            Rule = rule,
            Binding = instance.Binding,
            Premises = PremisesOf(instance),
            Tests = rule.Tests,
            Moments = Ground(rule.Moments, instance.Binding),
            Effects = Effects(rule, rule.Conclusions, instance.Binding),
        };
    }

    /// <summary>The record of one option of a rule's choice. What the rule rests on stands behind the open choice.</summary>
    public Record OfOption(Node open, ChoiceKey.OfRule choice, Option option, int number) => new()
    {
        Mechanism = Mechanism.Option,
        Rule = choice.Rule,
        Binding = choice.Binding,
        Premises = [open.Atom, new Atom.Chosen(choice, number)],
        Tests = option.If is null ? [] : [option.If],
        Moments = Ground(choice.Rule.Moments, choice.Binding),
        Effects = Effects(choice.Rule, option.Then, choice.Binding),
    };

    /// <summary>The record of one of several ways to a wanted state.</summary>
    public Record OfAlternative(Node open, ChoiceKey.OfWays choice, int number, Atom concluded) => new()
    {
        Mechanism = Mechanism.Alternative,
        Binding = new Binding([choice.Part]),
        Premises = [open.Atom, new Atom.Chosen(choice, number)],
        Effects = [Concludes(concluded)],
    };

    /// <summary>The record of a mechanism that needs nothing but its atom.</summary>
    public Record Of(Mechanism mechanism, Node origin, object about, Atom concluded) => new()
    {
        Mechanism = mechanism,
        Binding = new Binding([about]),
        Premises = [origin.Atom],
        Effects = [Concludes(concluded)],
    };

    /// <summary>The nodes that a record supports, one for each effect that is an atom.</summary>
    public Node[] Concluded(Record record)
    {
        var count = 0;
        for (var e = 0; e < record.Effects.Count; e++)
            if (record.Effects[e].Atom is not null) count++;
        if (count == 0) return [];
        var concluded = new Node[count];
        count = 0;
        for (var e = 0; e < record.Effects.Count; e++)
            if (record.Effects[e].Atom is { } atom) concluded[count++] = nodes.Intern(atom);
        return concluded;
    }

    private static List<Atom> PremisesOf(RuleInstance instance)
    {
        var premises = new List<Atom>(instance.Grounds.Length);
        foreach (var ground in instance.Grounds)
        {
            var atom = ground.Source.Atom;
            if (atom is not Atom.Given && !premises.Contains(atom)) premises.Add(atom);
        }
        return premises;
    }

    private static GroundState[] Ground(IReadOnlyList<StateCondition> conditions, Binding binding)
    {
        if (conditions.Count == 0) return [];
        var ground = new GroundState[conditions.Count];
        for (var i = 0; i < ground.Length; i++)
            ground[i] = new GroundState(binding.Part(conditions[i].Slot), conditions[i].Aspect, conditions[i].States);
        return ground;
    }

    private Effect[] Effects(CompiledRule rule, IReadOnlyList<Conclusion> conclusions, Binding binding)
    {
        var effects = new Effect[conclusions.Count];
        for (var i = 0; i < effects.Length; i++)
        {
            var conclusion = conclusions[i];
            var atom = AtomOf(rule, conclusion, binding);
            effects[i] = new Effect(
                conclusion, atom is null ? null : nodes.Intern(atom).Atom, FactOf(conclusion, binding), conclusion.IfUnknown);
        }
        return Array.Exists(effects, static effect => effect.Conclusion is Conclusion.Waypoints) ? [.. effects, .. Further(conclusions, binding)] : effects;
    }

    // The first state to pass stands with the conclusion itself.
    private IEnumerable<Effect> Further(IReadOnlyList<Conclusion> conclusions, Binding binding) =>
        from pass in conclusions.OfType<Conclusion.Waypoints>()
        from state in pass.States.Skip(1)
        select new Effect(null, nodes.Intern(Wanted(state, binding)).Atom, null, pass.IfUnknown);

    private Effect Concludes(Atom atom) => new(null, nodes.Intern(atom).Atom, null, IfUnknown.Do);

    private static Atom? AtomOf(CompiledRule rule, Conclusion conclusion, Binding binding) => conclusion switch
    {
        Conclusion.Need need => Wanted(need.State, binding),
        Conclusion.Waypoints pass => Wanted(pass.States[0], binding),
        Conclusion.Do work => new Atom.Occurs(new Step(work.Operation, binding.Part(work.Slot))),
        Conclusion.Relate relate => new Atom.Related(relate.Relation, binding.Part(relate.First), binding.Part(relate.Second)),
        Conclusion.OneOf choice => new Atom.Open(new ChoiceKey.OfRule(rule, binding, Choices.NumberOf(rule, choice))),
        _ => null,
    };

    private static Atom.Wanted Wanted(StateCondition state, Binding binding) => new(binding.Part(state.Slot), state.Aspect, state.States);

    private static FactKey? FactOf(Conclusion conclusion, Binding binding) => conclusion switch
    {
        Conclusion.Set set => new FactKey(binding.Part(set.Slot), set.Fact),
        Conclusion.Demand demand => new FactKey(binding.Part(demand.Slot), demand.Fact),
        _ => null,
    };
}
