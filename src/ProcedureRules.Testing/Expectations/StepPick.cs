using ProcedureRules.Packs;
using ProcedureRules.Plans;

namespace ProcedureRules.Testing.Expectations;

/// <summary>The steps that are meant: those of an operation, on any part or on one.</summary>
internal sealed record StepPick(Operation Operation, string? Part)
{
    /// <summary>As it is written.</summary>
    public string Name => Part is null ? Operation.Name : $"{Operation.Name}({Part})";

    /// <summary>Whether a step is one of them.</summary>
    public bool Is(PlanStep step) => step.Step.Operation.Name == Operation.Name && (Part is null || step.Step.Part.Name == Part);

    /// <summary>The steps of a plan that are meant.</summary>
    public IReadOnlyList<PlanStep> In(Plan plan) => [.. plan.Steps.Where(Is)];
}
