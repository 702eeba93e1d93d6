using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Plans;

namespace ProcedureRules.Explaining;

/// <summary>
/// Unfolds the records behind an item into a tree: one support for each atom, the most direct of those that make it as firm as it is, so that
/// no explanation runs in a circle. What was already told is not told again. In a plan, what rests on its steps is told before what rests on
/// work that it has not.
/// </summary>
internal sealed class WhyTree(BeliefState beliefs, Plan? plan = null, int deepest = WhyTree.UsualDepth)
{
    private const int UsualDepth = 60;

    private readonly Support _support = new(beliefs, plan);
    private readonly Reasons _reasons = new(beliefs);
    private readonly AtomTexts _texts = new(beliefs);
    private readonly HashSet<object> _told = [];

    /// <summary>Why a step stands in the plan.</summary>
    public WhyNode Of(Step step) => Of(new Atom.Occurs(step));

    /// <summary>Why an atom holds, or may.</summary>
    public WhyNode Of(Atom atom) => Of(atom, beliefs.Available(atom), 0);

    /// <summary>Why a record concludes, with what some of its conclusions reckon with.</summary>
    public WhyNode Of(Record record, Func<Conclusion, bool>? isTold = null) => Of(record, LevelOf(record), isTold, 0);

    /// <summary>Why something is taken to be what it is.</summary>
    public WhyNode Of(Reading reading) => Of(reading, 0);

    /// <summary>What stands directly behind an atom; empty where it is stated, or where nothing is known to stand behind it.</summary>
    public IReadOnlyList<WhyNode> Behind(Atom atom)
    {
        var level = beliefs.Available(atom);
        _told.Add(atom);
        return _support.Direct(atom, level) is { } found ? [Of(found.Effect, found.Level, 0)] : [];
    }

    private WhyNode Of(Atom atom, Assurance level, int depth)
    {
        var (sort, text, id) = (AtomTexts.SortOf(atom), _texts.Of(atom), AtomTexts.IdOf(atom));
        if (_support.Direct(atom, level) is not { } found)
        {
            if (atom is Atom.Chosen chosen) return _told.Add(atom) ? new WhyNode(sort, text, [.. _texts.NotTaken(plan, chosen)]) : AsAbove(text, id);
            return WhyNode.Leaf(sort, atom is Atom.Related or Atom.Exists ? _texts.WithSource(text, atom) : text, id);
        }

        if (!_told.Add(atom)) return AsAbove(text, id);
        return new WhyNode(sort, text, depth >= deepest ? [Deeper] : [Of(found.Effect, found.Level, depth + 1)]) { Id = id };
    }

    private WhyNode Of(RecordEffect effect, Assurance level, int depth) => Of(effect.Record, level, conclusion => conclusion == effect.Effect.Conclusion, depth);

    private WhyNode Of(Record record, Assurance level, Func<Conclusion, bool>? isTold, int depth)
    {
        var reason = _reasons.Of(record);
        var node = new WhyNode(WhyNodeSort.Rule, reason.Text, depth >= deepest ? [Deeper] : Because(record, level, isTold, depth))
        {
            Rule = record.Rule is null ? null : reason.Rule,
            Pack = reason.Pack,
            Basis = reason.Basis,
        };
        return node.Because.Count == 0 ? node with { Sort = WhyNodeSort.Declaration } : node;
    }

    private List<WhyNode> Because(Record record, Assurance level, Func<Conclusion, bool>? isTold, int depth)
    {
        var because = new List<WhyNode>();
        var read = new HashSet<Reading>();
        for (var i = 0; i < record.Tests.Count; i++) because.Add(Of(record, i, read, depth + 1));
        foreach (var moment in record.Moments) because.Add(Of(moment, depth + 1));
        foreach (var premise in record.Premises.Distinct())
        {
            if (premise is Atom.Exists exists && beliefs.Exists(exists.Part) == Truth.Yes) continue;
            if (premise is Atom.Open && SameRule(record, premise, level) is { } choice) because.AddRange(Because(choice.Record, level, null, depth));
            else because.Add(Of(premise, Foundations.LevelOfPremise(premise, level), depth + 1));
        }

        // What the conclusions reckon with beside the conditions: the figures of a demand, of a limit, of a wait.
        foreach (var told in record.Effects.Select(effect => effect.Conclusion).Where(conclusion => conclusion is not null && isTold?.Invoke(conclusion) == true))
            foreach (var reading in ReadingIndex.Of(told, record.Binding, beliefs.PartsOf))
                if (read.Add(reading)) because.Add(Of(reading, depth + 1));
        if (record.Mechanism == Mechanism.Arrival && record.Premises is [Atom.Exists arrived]) because.AddRange(_texts.OnArrival(arrived.Part));
        if (because.Count == 0) because.AddRange(record.Premises.OfType<Atom.Exists>().Select(part => Of(part, level, depth + 1)));
        return because;
    }

    // One way of a choice and the choice itself come from the same words of the same rule.
    private RecordEffect? SameRule(Record record, Atom open, Assurance level) =>
        _support.Direct(open, level) is { Effect: var effect } && effect.Record.Rule == record.Rule ? effect : null;

    private WhyNode Of(Record record, int test, HashSet<Reading> read, int depth)
    {
        var text = new Wording($"{Words.Condition(record, record.Tests[test])}: {AtomTexts.Word(beliefs.TruthOf(record, test))}");
        if (depth >= deepest) return new WhyNode(WhyNodeSort.Condition, text, [Deeper]);
        var readings = record.Tests[test].Reads(record.Binding, beliefs.PartsOf).Distinct().ToList();
        read.UnionWith(readings);
        return new WhyNode(WhyNodeSort.Condition, text, readings.Count == 0
            ? [WhyNode.Leaf(WhyNodeSort.Fact, "the vehicle has none of what this asks for")]
            : [.. readings.Select(reading => Of(reading, depth + 1))]);
    }

    // In a plan a state is what a step left.
    private WhyNode Of(GroundState moment, int depth)
    {
        var text = new Wording($"At that moment the {Words.State(moment)}.");
        var maker = plan?.Steps.FirstOrDefault(step => step.Changes.Any(change => change.After.Part == moment.Part
            && ReferenceEquals(change.After.Aspect, moment.Aspect) && (change.After.States.Bits & ~moment.States.Bits) == 0));
        if (maker is null || depth >= deepest) return WhyNode.Leaf(WhyNodeSort.State, text);
        return new WhyNode(WhyNodeSort.State, text, [Of(new Atom.Occurs(maker.Step), beliefs.Available(new Atom.Occurs(maker.Step)), depth + 1)]);
    }

    private WhyNode Of(Reading reading, int depth) => reading switch
    {
        Reading.OfFact fact => Of(fact.Key, depth),
        Reading.OfDemand demand => OfDemand(demand.Key, depth),
        Reading.OfRelation relation => OfRead(new Atom.Related(relation.Relation, relation.A, relation.B), depth),
        Reading.OfPart part => OfRead(new Atom.Exists(part.Part), depth),
        _ => throw new ArgumentOutOfRangeException(nameof(reading)),
    };

    private WhyNode OfRead(Atom atom, int depth) => Of(atom, beliefs.Available(atom), depth);

    private WhyNode Of(FactKey key, int depth) => Of(_texts.Of(key), key.ToString(), ContributorsTo<Conclusion.Set>(key), key, depth);

    private WhyNode OfDemand(FactKey key, int depth)
    {
        var bounds = ContributorsTo<Conclusion.Demand>(key).ToLookup(effect => ((Conclusion.Demand)effect.Effect.Conclusion!).IsAtMost);
        var least = Of(_texts.OfDemand(key), key.ToString(), [.. bounds[false]], ("demand", key), depth);
        if (!bounds[true].Any()) return least;
        var most = Of(_texts.OfAllowed(key), key.ToString(), [.. bounds[true]], ("allowed", key), depth);
        return bounds[false].Any() ? least.And([most]) : most;
    }

    private WhyNode Of(Wording text, string id, List<RecordEffect> contributors, object about, int depth)
    {
        if (contributors.Count == 0) return WhyNode.Leaf(WhyNodeSort.Fact, text, id);
        if (!_told.Add(about)) return AsAbove(text, id);
        if (depth >= deepest) return new WhyNode(WhyNodeSort.Fact, text, [Deeper]) { Id = id };

        // A rule that says the same of several parts or steps is told once.
        return new WhyNode(WhyNodeSort.Fact, text,
        [
            .. contributors.DistinctBy(effect => (effect.Record.Rule, _reasons.Of(effect.Record).Text.ToString()))
                .Select(effect => Of(effect, beliefs.Available(effect.Record, effect.Index), depth + 1)),
        ])
        { Id = id };
    }

    private List<RecordEffect> ContributorsTo<TConclusion>(FactKey key)
        where TConclusion : Conclusion =>
        [.. beliefs.Network.RecordsWith<TConclusion>().Where(effect =>
            effect.Effect.Fact == key && beliefs.Available(effect.Record, effect.Index) > Assurance.No)];

    private Assurance LevelOf(Record record) =>
        Enumerable.Range(0, record.Effects.Count).Select(effect => beliefs.Available(record, effect)).DefaultIfEmpty().Max();

    private static WhyNode Deeper { get; } = WhyNode.Leaf(WhyNodeSort.CutOff, "(and so on)");

    private static WhyNode AsAbove(Wording text, string? id) => WhyNode.Leaf(WhyNodeSort.Repeated, new Wording(units => $"{text.In(units)} (as above)"), id);
}
