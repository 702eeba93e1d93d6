using ProcedureRules.Beliefs;
using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Plans;

namespace ProcedureRules.Testing.Covering;

/// <summary>What one case reaches of the packs. A rule that is compiled for several kinds counts as the one that is written.</summary>
internal sealed class CoverageSheet
{
    /// <summary>How far each rule came.</summary>
    public Dictionary<(string Pack, string Rule), Assurance> Rules { get; } = [];

    /// <summary>What each condition came to.</summary>
    public HashSet<((string Pack, string Rule) Rule, SourceSpan Condition, Truth Truth)> Conditions { get; } = [];

    /// <summary>Where the conclusions stand that were used.</summary>
    public HashSet<SourceSpan> Conclusions { get; } = [];

    /// <summary>The operations of steps.</summary>
    public HashSet<Operation> Planned { get; } = [];

    /// <summary>The facts of which something was known.</summary>
    public HashSet<FactDefinition> Known { get; } = [];

    /// <summary>The facts that were asked for.</summary>
    public HashSet<FactDefinition> AskedFacts { get; } = [];

    /// <summary>The jobs that were asked for; whether a plan led to their end.</summary>
    public Dictionary<JobDefinition, bool> Jobs { get; } = [];

    /// <summary>Notes what one turn came to.</summary>
    public void Note(Plan plan)
    {
        foreach (var record in plan.Beliefs.Network.Records) Note(plan.Beliefs, record);
        Planned.UnionWith(plan.Steps.Select(step => step.Step.Operation));
        AskedFacts.UnionWith(plan.Questions.Select(question => question.About).OfType<Reading.OfFact>().Select(asked => asked.Key.Fact));
        foreach (var part in plan.Situation.Parts)
            Known.UnionWith(plan.Situation.Vocabulary.FactsOf(part.Kind).Where(fact => IsKnown(plan.Beliefs, new FactKey(part, fact))));
        foreach (var job in plan.Situation.Jobs.Select(request => request.Job)) Jobs[job] = Jobs.GetValueOrDefault(job) || !plan.IsStopped;
    }

    private void Note(BeliefState beliefs, Record record)
    {
        if (record.Rule is not { } rule) return;
        var key = (rule.Pack, rule.Title);
        var level = Assurance.No;
        for (var effect = 0; effect < record.Effects.Count; effect++)
        {
            var own = Level(beliefs, record, effect);
            if (own > level) level = own;
            if (own > Assurance.No && record.Effects[effect].Conclusion is { Span.File: not null } conclusion) Conclusions.Add(conclusion.Span);
        }

        Rules[key] = Rules.TryGetValue(key, out var before) && before > level ? before : level;
        for (var test = 0; test < record.Tests.Count; test++) Conditions.Add((key, record.Tests[test].Span, beliefs.TruthOf(record, test)));
    }

    // What is only demanded is never stated: it is known by its demands.
    private static bool IsKnown(BeliefState beliefs, FactKey key) =>
        key.Fact.IsDemand ? beliefs.Demands(key) != default : beliefs.SourceOf(key) != Source.None;

    // A step that a rule forbids is not done, and so takes the rule's own premise away: it fires where it would forbid the step if that were done.
    private static Assurance Level(BeliefState beliefs, Record record, int effect) => record.Effects[effect].Conclusion is Conclusion.ForbidStep forbid
        ? beliefs.Given(record, effect, record.Binding.Step(forbid.Step))
        : beliefs.Available(record, effect);
}
