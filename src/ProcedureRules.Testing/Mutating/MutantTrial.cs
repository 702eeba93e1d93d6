using ProcedureRules.Beliefs;
using ProcedureRules.Diagnostics;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Planning;
using ProcedureRules.Testing.Expectations;

namespace ProcedureRules.Testing.Mutating;

/// <summary>Tries a mutant at the moments that hold its rule, up to the first expectation that fails.</summary>
internal sealed class MutantTrial(RuleBase rules, Stages stages, CancellationToken cancellation)
{
    // A change that makes the rules run away is noticed by it, long before memory is.
    private const int MostRecords = 50_000;

    /// <summary>What it came to.</summary>
    public MutantResult Try(Mutant mutant)
    {
        var met = stages.With(mutant.Pack, mutant.Rule);
        if (met.Count == 0) return Result(mutant, MutantOutcome.Unreached, null);
        var inferring = mutant.Edit.Inferring(rules);
        foreach (var staged in met)
        {
            cancellation.ThrowIfCancellationRequested();
            if (IsNoticed(mutant.Edit, staged, inferring)) return Result(mutant, MutantOutcome.Killed, staged.Case.Name);
        }

        return Result(mutant, MutantOutcome.Survived, null);
    }

    /// <summary>A result of a mutant.</summary>
    public static MutantResult Result(Mutant mutant, MutantOutcome outcome, string? by) =>
        new(mutant.Id, mutant.Pack, mutant.Rule, mutant.Span, mutant.Change, mutant.Due, outcome, by);

    private bool IsNoticed(RuleEdit edit, StagedRule staged, RuleBase? inferring)
    {
        var stage = staged.Stage;
        var known = stage.Outcome.Beliefs.Network.Records;
        if (!staged.Of.Any(record => edit.CanShow(known[record], stage))) return false;
        var result = inferring is null
            ? new InferenceResult { Situation = stage.Situation, Rules = rules, Records = Edited(edit, staged, known) }
            : new InferenceSession(inferring).Infer(stage.Situation, MostRecords, cancellation);
        if (inferring is not null && result.IsSettled && result.Records.Count == known.Count) return false;
        if (!result.IsSettled || BeliefNetwork.Build(result, new DiagnosticBag()) is not { } network) return true;
        if (Planner.Plan(network.Initial, cancellation).Plan is not { } plan) return true;
        var outcome = new Outcome(plan, network.Initial);
        return stage.Judging.Any(expected => !expected.Judge(outcome).Holds);
    }

    private static Record[] Edited(RuleEdit edit, StagedRule staged, IReadOnlyList<Record> known)
    {
        var records = known.ToArray();
        foreach (var at in staged.Of) records[at] = edit.Apply(records[at]);
        return records;
    }
}
