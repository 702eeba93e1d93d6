using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Planning;

namespace ProcedureRules.Explaining;

/// <summary>
/// Unfolds the records behind an item into a tree: one support for each atom, the firmest first and of these the most direct, so that no
/// explanation runs in a circle. What was already told is not told again.
/// </summary>
internal sealed class WhyTree(BeliefState beliefs)
{
    private const int Deepest = 24;

    private readonly Grounds _grounds = new(beliefs);
    private readonly Reasons _reasons = new(beliefs);
    private readonly HashSet<object> _told = [];

    /// <summary>Why a step stands in the plan.</summary>
    public WhyNode Of(Step step) => Of(new Atom.Occurs(step), 0);

    /// <summary>Why a record concludes.</summary>
    public WhyNode Of(Record record) => Of(record, 0);

    /// <summary>Why a fact is taken to be what it is.</summary>
    public WhyNode Of(FactKey key) => Of(key, 0);

    private WhyNode Of(Atom atom, int depth)
    {
        var text = TextOf(atom);
        if (depth > Deepest || IsStated(atom)) return WhyNode.Stated(text);
        if (!_told.Add(atom)) return WhyNode.Stated(new Wording(units => $"{text.In(units)} (as above)"));
        var supports = atom is Atom.Occurs or Atom.Wanted ? Direct(atom, depth) : [.. _grounds.Of(atom).Take(1)];
        return new WhyNode(text, null, null, null, [.. supports.Select(support => Of(support.Record, depth + 1))]);
    }

    // A mechanism is not what a person asks for: what wanted the state is.
    private List<RecordEffect> Direct(Atom atom, int depth)
    {
        var found = new List<RecordEffect>();
        foreach (var support in _grounds.Of(atom))
        {
            var wanted = support.Record.Mechanism is Mechanism.Reach or Mechanism.Alternative
                ? support.Record.Premises.FirstOrDefault(premise => premise is Atom.Wanted or Atom.Open)
                : null;
            if (wanted is null || depth > Deepest) found.Add(support);
            else found.AddRange(Direct(wanted, depth + 1));
            if (found.Count > 0) break;
        }
        return found;
    }

    private WhyNode Of(Record record, int depth)
    {
        var reason = _reasons.Of(record);
        if (depth > Deepest) return new WhyNode(reason.Text, reason.Rule, reason.Pack, reason.Basis, []);
        var because = new List<WhyNode>();
        for (var i = 0; i < record.Tests.Count; i++) because.Add(Of(record, i, depth + 1));
        foreach (var moment in record.Moments)
            because.Add(WhyNode.Stated(new Wording($"At that moment the {Words.State(moment)}.")));
        foreach (var premise in record.Premises)
            if (premise is not Atom.Exists exists || beliefs.Exists(exists.Part) != Truth.Yes) because.Add(Of(premise, depth + 1));
        return new WhyNode(reason.Text, record.Rule is null ? null : reason.Rule, reason.Pack, reason.Basis, because);
    }

    private WhyNode Of(Record record, int test, int depth)
    {
        var truth = beliefs.TruthOf(record, test) switch { Truth.Yes => "yes", Truth.No => "no", _ => "not known" };
        var readings = record.Tests[test].Reads(record.Binding, beliefs.PartsOf).Distinct();
        return new WhyNode(
            new Wording($"{Words.Condition(record, record.Tests[test])}: {truth}"), null, null, null,
            [.. readings.Select(reading => Of(reading, depth + 1))]);
    }

    private WhyNode Of(Reading reading, int depth) => reading switch
    {
        Reading.OfFact fact => Of(fact.Key, depth),
        Reading.OfDemand demand => OfDemand(demand.Key, depth),
        Reading.OfRelation relation => Of(new Atom.Related(relation.Relation, relation.A, relation.B), depth),
        Reading.OfPart part => Of(new Atom.Exists(part.Part), depth),
        _ => throw new ArgumentOutOfRangeException(nameof(reading)),
    };

    private WhyNode Of(FactKey key, int depth)
    {
        var name = $"{key.Part.Text} {Words.Name(key.Fact.Name)}";
        var source = beliefs.SourceOf(key);
        var said = source == Source.None ? "not known" : source.ToString().ToLowerInvariant();
        var note = beliefs.Observations(key).Select(observation => observation.Note).FirstOrDefault(note => note is not null);
        var text = new Wording(units => $"{name}: {beliefs.Fact(key.Part, key.Fact).In(units)}, {said}{(note is null ? "" : $" ({note})")}");
        if (depth > Deepest || !_told.Add(key)) return WhyNode.Stated(text);
        var setters = beliefs.Network.RecordsWith<Conclusion.Set>()
            .Where(effect => effect.Record.Effects[effect.Index].Fact == key && beliefs.Available(effect.Record, effect.Index) > Assurance.No);
        return new WhyNode(text, null, null, null, [.. setters.Select(setter => Of(setter.Record, depth + 1))]);
    }

    private WhyNode OfDemand(FactKey key, int depth)
    {
        var text = new Wording(units => $"{key.Part.Text} {Words.Name(key.Fact.Name)} demanded: {beliefs.Demanded(key.Part, key.Fact).ToDisplay(units)}");
        if (depth > Deepest || !_told.Add(("demand", key))) return WhyNode.Stated(text);
        var demands = beliefs.Network.RecordsWith<Conclusion.Demand>()
            .Where(effect => effect.Record.Effects[effect.Index].Fact == key && beliefs.Available(effect.Record, effect.Index) > Assurance.No);
        return new WhyNode(text, null, null, null, [.. demands.Select(demand => Of(demand.Record, depth + 1))]);
    }

    private bool IsStated(Atom atom) => atom is Atom.Exists or Atom.Asked or Atom.Chosen || beliefs.Network.RecordsSupporting(atom).Count == 0;

    private Wording TextOf(Atom atom) => atom switch
    {
        Atom.Exists exists => new Wording($"the vehicle has the {exists.Part.Text}: {Word(beliefs.Exists(exists.Part))}"),
        Atom.Related related => new Wording($"{Words.Relation(related.Relation, related.A, related.B)}: {Word(beliefs.TruthOf(atom))}"),
        Atom.Asked asked => new Wording($"the job is asked for: {asked.Request.Job.Text.Text.Replace("{it}", asked.Request.On.Text, StringComparison.Ordinal)}"),
        Atom.Occurs occurs => Words.Instruction(beliefs, occurs.Step),
        Atom.Wanted wanted => new Wording($"wanted: {Words.State(new GroundState(wanted.Part, wanted.Aspect, wanted.States))}"),
        Atom.Open open => new Wording($"there is a choice: {Words.Choice(open.Choice)}"),
        Atom.Chosen chosen => new Wording($"this way was chosen: {Words.Choice(chosen.Choice)}"),
        _ => new Wording(""),
    };

    private static string Word(Truth truth) => truth switch { Truth.Yes => "yes", Truth.No => "no", _ => "not known" };
}
