using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Plans;

/// <summary>One step of a plan.</summary>
public sealed class PlanStep
{
    /// <summary>The id: <c>operation(part)</c>, with <c>#2</c> and so on behind a repeated one.</summary>
    public required string Id { get; init; }

    /// <summary>Its number in the plan, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>The operation on the part.</summary>
    public required Step Step { get; init; }

    /// <summary>The part of the work.</summary>
    public Phase Phase => Step.Operation.Phase;

    /// <summary>The instruction.</summary>
    public required Wording Text { get; init; }

    /// <summary>How long it takes: the operation's time, times what makes it slower here.</summary>
    public required Quantity Time { get; init; }

    /// <summary>The labour: the time of all people that it takes.</summary>
    public Quantity Labour => Step.Operation.OfAll(Time);

    /// <summary>The states it changes: before and after.</summary>
    public required IReadOnlyList<(GroundState Before, GroundState After)> Changes { get; init; }

    /// <summary>Ids of the steps it must come after.</summary>
    public required IReadOnlyList<string> After { get; init; }

    /// <summary>Cautions to read before it.</summary>
    public IReadOnlyList<PlanCaution> Cautions { get; init; } = [];

    /// <summary>Checks at or during it.</summary>
    public IReadOnlyList<PlanCheck> Checks { get; init; } = [];

    /// <summary>Waits before it.</summary>
    public IReadOnlyList<PlanWait> Waits { get; init; } = [];

    /// <summary>Why it stands in the plan, and why here.</summary>
    public IReadOnlyList<Reason> Because { get; init; } = [];

    /// <summary>Detail lines.</summary>
    public IReadOnlyList<Wording> Detail { get; init; } = [];

    /// <summary>What it waits to be settled by: the step is done only if so. Empty: it is sure.</summary>
    public IReadOnlyList<Wording> Provisional { get; init; } = [];

    /// <summary>The plan holds before this step until these are known.</summary>
    public IReadOnlyList<PlanHold> Holds { get; init; } = [];

    /// <summary>The same with one more hold.</summary>
    internal PlanStep With(PlanHold hold) => new()
    {
        Id = Id,
        Number = Number,
        Step = Step,
        Text = Text,
        Time = Time,
        Changes = Changes,
        After = After,
        Cautions = Cautions,
        Checks = Checks,
        Waits = Waits,
        Because = Because,
        Detail = Detail,
        Provisional = Provisional,
        Holds = [.. Holds, hold],
    };
}
