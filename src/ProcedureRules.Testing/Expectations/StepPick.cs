using ProcedureRules.Ordering;
using ProcedureRules.Packs;
using ProcedureRules.Plans;

namespace ProcedureRules.Testing.Expectations;

/// <summary>The steps that are meant: those of an operation, on any part or on one; each time it is done, or one time.</summary>
internal sealed record StepPick(Operation Operation, string? Part, int? Time = null)
{
    /// <summary>The step, whichever time it is done.</summary>
    public string Step => Part is null ? Operation.Name : $"{Operation.Name}({Part})";

    /// <summary>As it is written.</summary>
    public string Name => Time is null ? Step : $"{Step}#{Time}";

    /// <summary>Whether a step is one of them.</summary>
    public bool Is(PlanStep step) => step.Step.Operation.Name == Operation.Name && (Part is null || step.Step.Part.Name == Part)
        && (Time is not { } time || step.Id == Occurrence.IdOf(step.Step, time));

    /// <summary>The steps of a plan that are meant.</summary>
    public IReadOnlyList<PlanStep> In(Plan plan) => [.. plan.Steps.Where(Is)];
}
