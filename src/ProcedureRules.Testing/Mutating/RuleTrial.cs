using ProcedureRules.Beliefs;
using ProcedureRules.Diagnostics;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Planning;
using ProcedureRules.Testing.Expectations;

namespace ProcedureRules.Testing.Mutating;

/// <summary>Tries the mutants of one rule at the moments that hold it, each up to the first expectation that fails. For one thread.</summary>
/// <param name="rules">The rules.</param>
/// <param name="moments">The moments, what is likeliest to notice first.</param>
/// <param name="isThorough">Whether every mutant is planned at every moment, even where it is known what comes of it.</param>
/// <param name="cancellation">Ends it early.</param>
internal sealed class RuleTrial(RuleBase rules, IEnumerable<StagedRule> moments, bool isThorough, CancellationToken cancellation)
{
    // A change that makes the rules run away is noticed by it, long before memory is.
    private const int MostRecords = 50_000;

    private readonly List<TriedStage> _stages = [.. moments.Select(moment => new TriedStage(moment))];

    /// <summary>What a mutant came to.</summary>
    public MutantResult Try(Mutant mutant)
    {
        if (_stages.Count == 0) return mutant.Result(MutantOutcome.Unreached, null);
        return Noticing(mutant.Edit) is not { } noticing ? mutant.Result(MutantOutcome.Survived, null) : Killed(noticing.Of.Case.Name);

        MutantResult Killed(string name)
        {
            Prefer(name);
            return mutant.Result(MutantOutcome.Killed, name);
        }
    }

    private TriedStage? Noticing(RuleEdit edit)
    {
        if (edit.Inferring(rules) is { } inferring) return _stages.Find(stage => IsNoticed(inferring, stage));
        // What an approved plan shows at a glance saves every plan.
        if (!isThorough && _stages.Find(stage => stage.Of.Held is { } held && IsSeen(edit, stage, held.Value)) is { } seeing) return seeing;
        return _stages.Find(stage => IsNoticed(edit, stage));
    }

    /// <summary>A case that has noticed one change of the rule is asked first about the next.</summary>
    public void Prefer(string name)
    {
        if (_stages.FindIndex(stage => stage.Of.Case.Name == name) is not (> 0 and var at)) return;
        var stage = _stages[at];
        _stages.RemoveAt(at);
        _stages.Insert(0, stage);
    }

    private static bool IsSeen(RuleEdit edit, TriedStage tried, HeldPlan held)
    {
        var (known, beliefs) = (tried.Records, tried.Of.Stage.Outcome.Beliefs);
        var after = tried.Of.Of.Select(at => edit.Apply(known[at])).ToList();
        var isChanged = tried.Of.Of.Where((at, i) => !ReferenceEquals(known[at], after[i])).Any();
        if (!isChanged) return false;
        var on = tried.FeedsItself ? after : after.Where(record => record.Tests.All(test => test.Evaluate(beliefs, record.Binding) != Truth.No));
        return held.Signs.AreLost(tried.Rule, on) || (!tried.FeedsItself && after.Where((record, i) => !ReferenceEquals(known[tried.Of.Of[i]], record)).Any(record => IsSure(record, tried.Of.Stage) && held.Signs.AreNew(record)));
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

    private bool IsNoticed(RuleEdit edit, TriedStage tried)
    {
        cancellation.ThrowIfCancellationRequested();
        var (stage, known) = (tried.Of.Stage, tried.Records);
        var records = known.ToArray();
        foreach (var at in tried.Of.Of) records[at] = edit.Apply(records[at]);
        var changed = tried.Of.Of.Where(at => !ReferenceEquals(records[at], known[at])).ToList();
        if (changed.Count == 0 || (tried.Of.Held is null && !tried.Concerns(changed))) return false;
        if (isThorough) return Plan();
        var forms = tried.FormsOf(records);
        if (forms.Equals(tried.Forms)) return false;
        if (tried.Known.TryGetValue(forms, out var isNoticed)) return isNoticed;
        var isDue = tried.Of.Held is not null || tried.Of.Of.Where((at, i) => Hearing.IsDue(stage, known[at], tried.Forms.Forms[i], records[at], forms.Forms[i])).Any();
        return tried.Known[forms] = isDue && Plan();

        bool Plan() => IsNoticed(tried, new InferenceResult { Situation = stage.Situation, Rules = rules, Records = records });
    }

    private bool IsNoticed(RuleBase inferring, TriedStage tried)
    {
        var stage = tried.Of.Stage;
        // However often the rule matches, it says no other words than these.
        if (!isThorough && tried.Of.Held is null && !tried.Rule.Conclusions.Any(conclusion => Hearing.MayBeHeard(stage, conclusion))) return false;
        var result = new InferenceSession(inferring).Infer(stage.Situation, MostRecords, cancellation);
        if (!result.IsSettled) return true;
        if (!isThorough && tried.More(result.Records) is { } more && (tried.Of.Held is null ? more.All(record => !Hearing.IsDue(stage, record)) : more.Count == 0)) return false;
        return IsNoticed(tried, result);
    }

    private bool IsNoticed(TriedStage tried, InferenceResult result)
    {
        var stage = tried.Of.Stage;
        if (BeliefNetwork.Build(result, new DiagnosticBag()) is not { } network) return true;
        if (!isThorough && tried.Of.Held?.Value.IsOtherwise(network.Initial) == true) return true;
        if (!isThorough && tried.Of.Held is null && result.Records.Count == tried.Records.Count && !tried.Of.Concern.Value.Has(new LabelChanges(tried.Of, network))) return false;
        if (Planner.Plan(network.Initial, cancellation).Plan is not { } plan) return true;
        if (tried.Of.Held?.Value.IsOther(plan) == true) return true;
        var outcome = new Outcome(plan, network.Initial);
        return stage.Judging.Any(expected => !expected.Judge(outcome).Holds);
    }
}
