using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Plans;

namespace ProcedureRules.Explaining;

/// <summary>The sentences of an explanation.</summary>
internal sealed class AtomTexts(BeliefState beliefs)
{
    public Wording Of(Atom atom) => atom switch
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

    public Wording Of(Reading reading) => reading switch
    {
        Reading.OfFact fact => Of(fact.Key),
        Reading.OfDemand demand => OfDemand(demand.Key),
        Reading.OfRelation relation => Of(new Atom.Related(relation.Relation, relation.A, relation.B)),
        Reading.OfPart part => Of(new Atom.Exists(part.Part)),
        _ => new Wording(reading.Id),
    };

    public static WhyNodeSort SortOf(Atom atom) => atom switch
    {
        Atom.Exists or Atom.Related => WhyNodeSort.Fact,
        Atom.Asked => WhyNodeSort.Job,
        Atom.Occurs => WhyNodeSort.Step,
        Atom.Wanted => WhyNodeSort.Want,
        _ => WhyNodeSort.Choice,
    };

    /// <summary>What <c>why</c> or <c>--set</c> takes; null where there is no such thing.</summary>
    public static string? IdOf(Atom atom) => atom switch
    {
        Atom.Exists exists => $"part {exists.Part.Name}",
        Atom.Related related => $"{related.Relation.Name}({related.A.Name}, {related.B.Name})",
        Atom.Occurs occurs => occurs.Step.Name,
        _ => null,
    };

    public Wording WithSource(Wording text, Atom atom) => beliefs.SourceOf(atom) is var source and not Source.None
        ? new Wording(units => $"{text.In(units)}, {source.ToString().ToLowerInvariant()}")
        : text;

    public Wording Of(FactKey key)
    {
        var name = $"{key.Part.Text} {Words.Name(key.Fact.Name)}";
        var source = beliefs.SourceOf(key);
        var said = source == Source.None ? "not known" : source.ToString().ToLowerInvariant();
        var note = beliefs.Observations(key).FirstOrDefault(observation => observation.Source == source && observation.Note is not null)?.Note;
        return new Wording(units => $"{name}: {beliefs.Fact(key.Part, key.Fact).In(units)}, {said}{(note is null ? "" : $" ({note})")}");
    }

    public Wording OfDemand(FactKey key) =>
        new(units => $"{key.Part.Text} {Words.Name(key.Fact.Name)} demanded: {beliefs.Demanded(key.Part, key.Fact).ToDisplay(units)}");

    public Wording OfAllowed(FactKey key) =>
        new(units => $"{key.Part.Text} {Words.Name(key.Fact.Name)} allowed at most: {beliefs.Allowed(key.Part, key.Fact).ToDisplay(units)}");

    /// <summary>The states of a part that are not its usual ones on arrival.</summary>
    public IEnumerable<WhyNode> OnArrival(Part part) =>
        from state in beliefs.Network.Result.Situation.States
        where state.Key.Part == part && state.Value != state.Key.Aspect.Normal
        select WhyNode.Leaf(WhyNodeSort.State, $"on arrival: {Words.State(new GroundState(part, state.Key.Aspect, StateSet.Of(state.Value)))}");

    /// <summary>Why the other ways of a choice were not taken.</summary>
    public static IEnumerable<WhyNode> NotTaken(PlanChoice choice) =>
        from way in choice.Ways
        where way.WhyNot is not null
        select WhyNode.Leaf(WhyNodeSort.Declaration, new Wording(units => $"not: {way.Text.In(units)} ({way.WhyNot!.In(units)})"));

    public IEnumerable<WhyNode> NotTaken(Plan? plan, Atom.Chosen chosen)
    {
        var others = plan?.Choices.FirstOrDefault(choice => choice.Key.Equals(chosen.Choice)) is { } choice ? NotTaken(choice).ToList() : [];
        return others.Count > 0 ? others
            : beliefs.Network.OptionsOf(chosen.Choice).Count == 1 ? [WhyNode.Leaf(WhyNodeSort.Declaration, "it is the only way that packs offer")] : [];
    }

    public static string Word(Truth truth) => truth switch { Truth.Yes => "yes", Truth.No => "no", _ => "not known" };
}
