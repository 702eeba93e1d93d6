using ProcedureRules.Beliefs;
using ProcedureRules.Diagnostics;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Planning;
using ProcedureRules.Testing.Expectations;

namespace ProcedureRules.Testing.Mutating;

/// <summary>
/// Tries the mutants of one rule at the moments that hold it, each up to the first that notices. What shows without a plan is looked at
/// everywhere; plans are made at the moments that are likeliest to notice. For one thread.
/// </summary>
/// <param name="rules">The rules.</param>
/// <param name="moments">The moments, what is likeliest to notice first.</param>
/// <param name="without">The moments at which a rule has not matched, and might once it is changed.</param>
/// <param name="isThorough">Whether every mutant is planned at every moment, even where it is known what comes of it.</param>
/// <param name="cancellation">Ends it early.</param>
internal sealed class RuleTrial(RuleBase rules, IEnumerable<StagedRule> moments, Func<CompiledRule, IReadOnlyList<StagedRule>> without, bool isThorough, CancellationToken cancellation)
{
    // A change that makes the rules run away is noticed by it, long before memory is.
    private const int MostRecords = 50_000;

    private readonly List<TriedStage> _stages = [.. moments.GroupBy(moment => moment.At.Case.Scenario).SelectMany(scenario => scenario.Select((moment, turn) => new TriedStage(moment) { Turn = turn })).OrderBy(stage => stage.Turn)];

    private List<TriedStage>? _without;

    /// <summary>What a mutant came to.</summary>
    public MutantResult Try(Mutant mutant)
    {
        if (_stages.Count == 0) return mutant.Result(MutantOutcome.Unreached, null);
        var noticing = mutant.Edit.Matching(rules) is { } matching ? Noticing(matching, mutant.Edit) : Noticing(mutant.Edit);
        if (noticing is null) return mutant.Result(MutantOutcome.Survived, null);
        Prefer(noticing.Of.At.Case.Name);
        return mutant.Result(MutantOutcome.Killed, noticing.Of.At.Case.Name);
    }

    /// <summary>A result with the ground on which nobody noticed, where nobody did.</summary>
    public MutantResult WithGround(Mutant mutant, MutantResult result)
    {
        if (result.Outcome != MutantOutcome.Survived) return result;
        if (mutant.Edit.Matching(rules) is not { } matching)
            return result with { Ground = SurvivalGround.Of(_stages, [.. _stages.Select(tried => Altered(mutant.Edit, tried)).OfType<Candidate>().Where(candidate => candidate.IsOtherwise).Select(MadeDifference.Of)]) };
        var stages = Others(mutant.Edit).Concat(_stages).ToList();
        return result with { Ground = SurvivalGround.Of(stages, [.. stages.Select(tried => MadeDifference.Of(tried, More(matching, tried))).Where(difference => difference.Effects.Count > 0)]) };
    }

    /// <summary>A case that has noticed one change of the rule is asked first about the next.</summary>
    public void Prefer(string name)
    {
        if (_stages.FindIndex(stage => stage.Of.At.Case.Name == name) is not (> 0 and var at)) return;
        var stage = _stages[at];
        _stages.RemoveAt(at);
        _stages.Insert(0, stage);
    }

    private TriedStage? Noticing(RuleEdit edit)
    {
        var candidates = new List<Candidate>();
        foreach (var tried in _stages)
        {
            cancellation.ThrowIfCancellationRequested();
            if (Changed(edit, tried) is not { } candidate) continue;
            if (isThorough) candidates.Add(candidate);
            else if (tried.Known.TryGetValue(candidate.Forms, out var isNoticed))
            {
                if (isNoticed) return tried;
            }
            else if (tried.Of.At.Held is { } held && IsSeen(candidate, held)) return Note(candidate, true);
            else if (IsDue(candidate)) candidates.Add(candidate);
            else Note(candidate, false);
        }

        foreach (var one in isThorough ? candidates : Likeliest(candidates))
            if (Note(one, IsNoticed(one.Tried, new InferenceResult { Situation = one.Tried.Of.Stage.Situation, Rules = rules, Records = one.Records() })) is { } noticing) return noticing;
        return null;
    }

    private static IEnumerable<Candidate> Likeliest(IEnumerable<Candidate> candidates)
    {
        var budget = new PlanBudget();
        return Candidate.InOrder(candidates).Where(one => budget.Allows(one.Tried, one.Difference));
    }

    private static TriedStage? Note(Candidate candidate, bool isNoticed)
    {
        candidate.Tried.Known[candidate.Forms] = isNoticed;
        return isNoticed ? candidate.Tried : null;
    }

    // Null where nothing of the rule is otherwise, or where nothing at the moment is about it.
    private Candidate? Changed(RuleEdit edit, TriedStage tried) =>
        Altered(edit, tried) is { } candidate && (isThorough || candidate.IsOtherwise) && (tried.Of.At.IsHeld || tried.Concerns(candidate.Changed)) ? candidate : null;

    // Null where the change does not concern the records of the rule.
    private static Candidate? Altered(RuleEdit edit, TriedStage tried)
    {
        Record[] own = [.. tried.Of.Of.Select(at => edit.Apply(tried.Records[at]))];
        return tried.FormsOf(own) is { } forms ? new Candidate(tried, own, forms) : null;
    }

    private static bool IsDue(Candidate candidate)
    {
        var (tried, stage) = (candidate.Tried, candidate.Tried.Of.Stage);
        return tried.Of.At.IsHeld
            || tried.Of.Of.Where((at, i) => Hearing.IsDue(stage, tried.Records[at], tried.Forms.Forms[i], candidate.Own[i], candidate.Forms.Forms[i])).Any();
    }

    private static bool IsSeen(Candidate candidate, HeldPlan held)
    {
        var (tried, beliefs) = (candidate.Tried, candidate.Tried.Of.Stage.Outcome.Beliefs);
        if (tried.FeedsItself) return held.Signs.AreLost(tried.Rule, candidate.Own);
        return held.Signs.AreLost(tried.Rule, candidate.Own.Where(record => record.Tests.All(test => test.Evaluate(beliefs, record.Binding) != Truth.No)))
            || candidate.Own.Where((record, i) => !ReferenceEquals(tried.Records[tried.Of.Of[i]], record)).Any(record => IsSure(record, tried.Of.Stage) && held.Signs.AreNew(record));
    }

    // Words hang on nothing else, and nothing else on them.
    private static bool IsSure(Record record, Stage stage)
    {
        var beliefs = stage.Outcome.Plan.Beliefs;
        return beliefs.Network == stage.Outcome.Beliefs.Network
            && record.Effects.All(effect => effect.Conclusion is Conclusion.Caution or Conclusion.Detail or Conclusion.Check or Conclusion.Tool or Conclusion.Supply)
            && record.Tests.All(test => test.Evaluate(stage.Outcome.Beliefs, record.Binding) == Truth.Yes)
            && record.Premises.All(premise => beliefs.Available(premise) == Assurance.Sure);
    }

    private TriedStage? Noticing(Rematch matching, RuleEdit edit)
    {
        var (here, elsewhere) = (new PlanBudget(), new PlanBudget());
        // Where the rule matches already, less often shows that it matches more.
        var others = Others(edit);
        var known = _stages.OrderBy(stage => (stage.Of.At.IsSlow ? 2 : 0) + (isThorough || stage.IsAtWork ? 0 : 1)).ToList();
        foreach (var (tried, budget) in others.Select(stage => (stage, elsewhere)).Concat(known.Select(stage => (stage, here))))
        {
            cancellation.ThrowIfCancellationRequested();
            var stage = tried.Of.Stage;
            // However often the rule matches, it says no other words than these.
            if (!isThorough && !tried.Of.At.IsHeld && !tried.Rule.Conclusions.Any(conclusion => Hearing.MayBeHeard(stage, conclusion))) continue;
            if (!isThorough && (budget.IsSpent || IsSilent(matching, tried) || !budget.Allows(tried, MadeDifference.Of(tried, More(matching, tried))))) continue;
            var result = matching.Infer(tried.Of.At.Atoms, tried.Matches(matching, MostRecords, cancellation), MostRecords, cancellation);
            if (!result.IsSettled) return tried;
            if (IsNoticed(tried, result)) return tried;
        }

        return null;
    }

    // Where the rule has not matched, and may once it is changed.
    private List<TriedStage> Others(RuleEdit edit)
    {
        _without ??= [.. without(_stages[0].Rule).Select(moment => new TriedStage(moment))];
        return [.. _without.Where(stage => edit.MayMatch(stage.Of.Stage)).DistinctBy(stage => isThorough ? stage.Of.At.Case.Name : stage.Of.At.Case.Scenario)];
    }

    // The records that are more than before and not off; none where it is not known.
    private IEnumerable<Record> More(Rematch matching, TriedStage tried) =>
        tried.Matches(matching, MostRecords, cancellation) is { } records ? tried.More(records).Where(record => !IsOff(record, tried)) : [];

    // Whatever would follow from records that say nothing says nothing either.
    private bool IsSilent(Rematch matching, TriedStage tried) =>
        tried.Matches(matching, MostRecords, cancellation) is { } records
        && tried.More(records).All(record => !tried.Of.At.IsHeld ? !Hearing.IsDue(tried.Of.Stage, record) : IsOff(record, tried));

    private static bool IsOff(Record record, TriedStage tried) =>
        !tried.FeedsItself && record.Tests.Any(test => test.Evaluate(tried.Of.Stage.Outcome.Beliefs, record.Binding) == Truth.No);

    private bool IsNoticed(TriedStage tried, InferenceResult result)
    {
        cancellation.ThrowIfCancellationRequested();
        var stage = tried.Of.Stage;
        if (BeliefNetwork.Build(result, new DiagnosticBag()) is not { } network) return true;
        if (!isThorough && tried.Of.At.Held?.IsOtherwise(network.Initial) == true) return true;
        if (!isThorough && !tried.Of.At.IsHeld && result.Records.Count == tried.Records.Count && !tried.Of.At.Concern.Has(new LabelChanges(tried.Of, network))) return false;
        if ((isThorough ? Planner.Plan(network.Initial, cancellation).Plan : tried.Of.At.Planner.Plan(network.Initial, cancellation)) is not { } plan) return true;
        if (tried.Of.At.Held?.IsOther(plan) == true) return true;
        var outcome = new Outcome(plan, network.Initial);
        return stage.Judging.Any(expected => !expected.Judge(outcome).Holds);
    }
}
