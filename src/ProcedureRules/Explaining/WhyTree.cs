using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Planning;

namespace ProcedureRules.Explaining;

/// <summary>
/// Unfolds the records behind an item into a tree: one support for each atom, the most direct of those that make it as firm as it is, so that
/// no explanation runs in a circle. What was already told is not told again.
/// </summary>
internal sealed class WhyTree(BeliefState beliefs, int deepest = WhyTree.UsualDepth)
{
    private const int UsualDepth = 24;

    private readonly Foundations _foundations = new(beliefs);
    private readonly Reasons _reasons = new(beliefs);
    private readonly HashSet<object> _told = [];

    private static WhyNode Deeper { get; } = WhyNode.Stated(new Wording("(and so on)"));

    /// <summary>Why a step stands in the plan.</summary>
    public WhyNode Of(Step step) => Of(new Atom.Occurs(step));

    /// <summary>Why an atom holds, or may.</summary>
    public WhyNode Of(Atom atom) => Of(atom, beliefs.Available(atom), 0);

    /// <summary>Why a record concludes.</summary>
    public WhyNode Of(Record record) => Of(record, LevelOf(record), 0);

    /// <summary>Why a fact is taken to be what it is.</summary>
    public WhyNode Of(FactKey key) => Of(key, 0);

    private WhyNode Of(Atom atom, Assurance level, int depth)
    {
        var text = TextOf(atom);
        var support = level == Assurance.No || _foundations.IsStated(atom, level) ? null : Direct(atom, level);
        if (support is not { } effect) return WhyNode.Stated(atom is Atom.Related or Atom.Exists ? WithSource(text, atom) : text);
        if (!_told.Add(atom)) return AsAbove(text);
        return new WhyNode(text, null, null, null, depth == deepest ? [Deeper] : [Of(effect.Record, level, depth + 1)]);
    }

    // A mechanism is not what a person asks for: what wanted the state is.
    private RecordEffect? Direct(Atom atom, Assurance level)
    {
        while (_foundations.SupportsOf(atom, level).Cast<RecordEffect?>().FirstOrDefault() is { } support)
        {
            var wanted = support.Record.Mechanism is Mechanism.Reach or Mechanism.Alternative
                ? support.Record.Premises.FirstOrDefault(premise => premise is Atom.Wanted or Atom.Open)
                : null;
            if (wanted is null) return support;
            atom = wanted;
        }

        return null;
    }

    private WhyNode Of(Record record, Assurance level, int depth)
    {
        var reason = _reasons.Of(record);
        var rule = record.Rule is null ? null : reason.Rule;
        if (depth >= deepest) return new WhyNode(reason.Text, rule, reason.Pack, reason.Basis, [Deeper]);
        var because = new List<WhyNode>();
        for (var i = 0; i < record.Tests.Count; i++) because.Add(Of(record, i, depth + 1));
        foreach (var moment in record.Moments)
            because.Add(WhyNode.Stated(new Wording($"At that moment the {Words.State(moment)}.")));
        foreach (var premise in record.Premises.Distinct())
        {
            if (premise is not Atom.Exists exists || beliefs.Exists(exists.Part) != Truth.Yes)
                because.Add(Of(premise, Foundations.LevelOfPremise(premise, level), depth + 1));
        }

        return new WhyNode(reason.Text, rule, reason.Pack, reason.Basis, because);
    }

    private WhyNode Of(Record record, int test, int depth)
    {
        var truth = beliefs.TruthOf(record, test) switch { Truth.Yes => "yes", Truth.No => "no", _ => "not known" };
        var readings = record.Tests[test].Reads(record.Binding, beliefs.PartsOf).Distinct();
        return new WhyNode(
            new Wording($"{Words.Condition(record, record.Tests[test])}: {truth}"), null, null, null,
            depth >= deepest ? [Deeper] : [.. readings.Select(reading => Of(reading, depth + 1))]);
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

    private WhyNode Of(FactKey key, int depth)
    {
        var name = $"{key.Part.Text} {Words.Name(key.Fact.Name)}";
        var source = beliefs.SourceOf(key);
        var said = source == Source.None ? "not known" : source.ToString().ToLowerInvariant();
        var note = beliefs.Observations(key).FirstOrDefault(observation => observation.Source == source && observation.Note is not null)?.Note;
        var text = new Wording(units => $"{name}: {beliefs.Fact(key.Part, key.Fact).In(units)}, {said}{(note is null ? "" : $" ({note})")}");
        return Of(text, ContributorsTo<Conclusion.Set>(key), key, depth);
    }

    private WhyNode OfDemand(FactKey key, int depth)
    {
        var text = new Wording(units => $"{key.Part.Text} {Words.Name(key.Fact.Name)} demanded: {beliefs.Demanded(key.Part, key.Fact).ToDisplay(units)}");
        return Of(text, ContributorsTo<Conclusion.Demand>(key), ("demand", key), depth);
    }

    private WhyNode Of(Wording text, List<RecordEffect> contributors, object about, int depth)
    {
        if (contributors.Count == 0) return WhyNode.Stated(text);
        if (!_told.Add(about)) return AsAbove(text);
        return new WhyNode(text, null, null, null, depth >= deepest ? [Deeper] : [.. contributors.Select(effect =>
            Of(effect.Record, beliefs.Available(effect.Record, effect.Index), depth + 1))]);
    }

    private List<RecordEffect> ContributorsTo<TConclusion>(FactKey key)
        where TConclusion : Conclusion =>
        [.. beliefs.Network.RecordsWith<TConclusion>().Where(effect =>
            effect.Effect.Fact == key && beliefs.Available(effect.Record, effect.Index) > Assurance.No)];

    private Assurance LevelOf(Record record) =>
        Enumerable.Range(0, record.Effects.Count).Select(effect => beliefs.Available(record, effect)).DefaultIfEmpty().Max();

    private static WhyNode AsAbove(Wording text) => WhyNode.Stated(new Wording(units => $"{text.In(units)} (as above)"));

    private Wording WithSource(Wording text, Atom atom) => beliefs.SourceOf(atom) is var source and not Source.None
        ? new Wording(units => $"{text.In(units)}, {source.ToString().ToLowerInvariant()}")
        : text;

    private Wording TextOf(Atom atom) => atom switch
    {
        Atom.Exists exists => new Wording($"the vehicle has the {exists.Part.Text}: {Word(beliefs.Exists(exists.Part))}"),
        Atom.Related related => new Wording($"{Words.Relation(related.Relation, related.A, related.B)}: {Word(beliefs.TruthOf(atom))}"),
        Atom.Asked asked => new Wording($"the job is asked for: {asked.Request.Job.Text.Text.Replace("{it}", asked.Request.On.Text, StringComparison.Ordinal)}"),
        Atom.Occurs occurs => Words.Instruction(beliefs, occurs.Step),
        Atom.Wanted wanted => new Wording($"wanted: {Words.State(new GroundState(wanted.Part, wanted.Aspect, wanted.States))}"),
        Atom.Open open => new Wording($"there is a choice: {Words.Choice(open.Choice)}"),
        Atom.Chosen chosen => new Wording($"this way {(beliefs.Taken(chosen.Choice) == chosen.Option ? "was" : "may be")} chosen: {Words.Choice(chosen.Choice)}"),
        _ => new Wording(""),
    };

    private static string Word(Truth truth) => truth switch { Truth.Yes => "yes", Truth.No => "no", _ => "not known" };
}
