using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Plans;
using ProcedureRules.Spelling;

namespace ProcedureRules.Explaining;

/// <summary>Why an item does not stand in a plan: the rules that would have given it, and what would have to be otherwise.</summary>
public static class WhyNot
{
    private const int MostRules = 6;

    /// <summary>The explanation of a step by id or operation, or of a caution, check, tool, supply, stop or cause by a piece of its words.</summary>
    /// <param name="plan">The plan that does not have it.</param>
    /// <param name="beliefs">What is believed before any way was chosen.</param>
    /// <param name="item">The item.</param>
    /// <param name="cancellation">Ends the search early.</param>
    /// <returns>The answer; null where no operation and no text of a rule is called so, or where the plan has it.</returns>
    public static WhyNotAnswer? Of(Plan plan, BeliefState beliefs, string item, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(beliefs);
        ArgumentNullException.ThrowIfNull(item);
        if (WhyNotTarget.Of(beliefs, item.Trim()) is not { } target || target.IsIn(plan)) return null;
        var records = target.Records();
        var matched = records.Select(record => record.Rule).ToHashSet();
        var rules = records.Select(record => Of(record, plan.Beliefs))
            .Concat(target.Rules().Where(rule => !matched.Contains(rule)).Select(rule => Of(rule, beliefs)))
            .OrderBy(rule => rule.Missing).Take(MostRules).ToList();
        var search = new SmallestChange(beliefs, target, cancellation);
        var reasons = new Reasons(plan.Beliefs);
        // A rule that forbids it on account of several steps says so once.
        var forbidden = target.Forbidding().Where(source => IsOn(source, plan.Beliefs)).Select(source => reasons.Of(source.Record))
            .DistinctBy(reason => (reason.Pack, reason.Rule, reason.Text.ToString())).ToList();
        var behind = records.Concat(target.Forbidding().Select(source => source.Record)).Concat(target.ForbiddingRivals().Select(source => source.Record)).Distinct();
        var change = search.Find([.. behind]);
        return new WhyNotAnswer(
            target.Text, target.NotTaken(plan), forbidden, rules, change, search.Result, search.Tried);
    }

    /// <summary>The step spelt nearest to an item that was not found; null where none is near.</summary>
    public static string? Nearest(Plan plan, string item)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var vocabulary = plan.Situation.Vocabulary;
        var steps = plan.Situation.Parts.SelectMany(part => vocabulary.Operations.Values.Where(operation => part.Kind.IsA(operation.On)).Select(operation => new Step(operation, part).Name));
        return NearestName.Find(item, vocabulary.Operations.Keys.Concat(steps));
    }

    // That a step is forbidden hangs on the step itself, which is not in the plan for that very reason.
    private static bool IsOn(RecordEffect source, BeliefState beliefs) => source.Effect.Conclusion is Conclusion.ForbidStep forbid
        ? beliefs.Given(source.Record, source.Index, source.Record.Binding.Step(forbid.Step)) > Assurance.No
        : beliefs.Available(source.Record, source.Index) > Assurance.No;

    private static WhyNotRule Of(Record record, BeliefState beliefs)
    {
        var conditions = new List<WhyNotCondition>();
        for (var i = 0; i < record.Tests.Count; i++)
            conditions.Add(new(new Wording(Words.Condition(record, record.Tests[i])), beliefs.TruthOf(record, i), Read(record, i, beliefs)));
        foreach (var premise in record.Premises.Distinct())
            if (Of(premise, beliefs) is { } condition) conditions.Add(condition);
        var reason = new Reasons(beliefs).Of(record);
        return new WhyNotRule(reason.Rule, reason.Pack, reason.Basis, reason.Text, conditions);
    }

    private static List<Wording> Read(Record record, int test, BeliefState beliefs) =>
    [
        .. record.Tests[test].Reads(record.Binding, beliefs.PartsOf).Distinct().Select(new AtomTexts(beliefs).Of),
    ];

    private static WhyNotCondition? Of(Atom premise, BeliefState beliefs) => premise switch
    {
        Atom.Related related => new(new Wording(Words.Relation(related.Relation, related.A, related.B)), beliefs.TruthOf(premise), []),
        Atom.Exists exists when beliefs.Exists(exists.Part) != Truth.Yes => new(new Wording($"the vehicle has the {exists.Part.Text}"), beliefs.Exists(exists.Part), []),
        Atom.Occurs occurs => new(
            new Wording(units => $"this is done: {Words.Instruction(beliefs, occurs.Step, units)}"),
            beliefs.Required(premise) >= Assurance.Protective ? Truth.Yes : beliefs.Available(premise) == Assurance.No ? Truth.No : Truth.Unknown, []),
        Atom.Chosen chosen when beliefs.Taken(chosen.Choice) is { } taken && taken != chosen.Option => new(new Wording("another way was chosen"), Truth.No, []),
        Atom.Open open => new(new Wording($"there is this choice: {Words.Choice(open.Choice)}"), beliefs.TruthOf(premise), []),
        _ => null,
    };

    // Nothing on the vehicle fits the rule as a whole: each of its conditions that bind is looked at alone.
    private static WhyNotRule Of(CompiledRule rule, BeliefState beliefs)
    {
        var conditions = rule.Patterns.Where(pattern => pattern.Predicate.Sort != PredicateSort.Step)
            .Select(pattern => new WhyNotCondition(new Wording(PatternPresence.Words(beliefs, pattern)), Kleene.Of(PatternPresence.Has(beliefs, pattern.Predicate)), [])).ToList();
        return new WhyNotRule(rule.Title, rule.Pack, rule.Basis, new Wording(rule.Because?.Text ?? ""), [.. conditions.DistinctBy(condition => condition.Text.ToString())]);
    }
}
