using ProcedureRules.Diagnostics;
using ProcedureRules.Packs;

namespace ProcedureRules.Language;

/// <summary>Something that a rule concludes. Slots refer to the rule's variables.</summary>
public abstract record Conclusion
{
    private Conclusion() { }

    /// <summary>What the plan does where it is possible but not sure; never <see cref="Packs.IfUnknown.Default"/> after compilation.</summary>
    public required IfUnknown IfUnknown { get; init; }

    /// <summary>Where it is written.</summary>
    public SourceSpan Span { get; init; }

    /// <summary>Whether it says the same; where it is written is no part of that.</summary>
    public virtual bool Equals(Conclusion? other) => other is not null && EqualityContract == other.EqualityContract && IfUnknown == other.IfUnknown;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(EqualityContract, IfUnknown);

    /// <summary>A state before and during a step (or, with <c>Step</c> -1, at the end of the job).</summary>
    public sealed record Need(int Step, StateCondition State) : Conclusion;

    /// <summary>States to pass in order (a job's waypoints).</summary>
    public sealed record Waypoints(IReadOnlyList<StateCondition> States) : Conclusion;

    /// <summary>One step before another, where both occur.</summary>
    public sealed record Order(int First, int Second) : Conclusion;

    /// <summary>A step that may not occur.</summary>
    public sealed record ForbidStep(int Step) : Conclusion;

    /// <summary>An operation on a part that may not occur.</summary>
    public sealed record ForbidWork(Operation Operation, int Slot) : Conclusion;

    /// <summary>A state that may not occur.</summary>
    public sealed record ForbidState(StateCondition State) : Conclusion;

    /// <summary>Work added to the job; <c>Before</c> and <c>After</c> are step slots or -1.</summary>
    public sealed record Do(Operation Operation, int Slot, int Before, int After) : Conclusion;

    /// <summary>Optional work while it is open.</summary>
    public sealed record Offer(Operation Operation, int Slot, Template? Text) : Conclusion;

    /// <summary>One of several ways.</summary>
    public sealed record OneOf(IReadOnlyList<Option> Options) : Conclusion;

    /// <summary>A derived value of a fact.</summary>
    public sealed record Set(int Slot, FactDefinition Fact, ValueExpression Value) : Conclusion;

    /// <summary>A demand on a fact: at least (or at most) a value.</summary>
    public sealed record Demand(int Slot, FactDefinition Fact, ValueExpression Value, bool IsAtMost) : Conclusion;

    /// <summary>A derived relation.</summary>
    public sealed record Relate(Relation Relation, int First, int Second) : Conclusion;

    /// <summary>A warning to show before a step, or with <c>Step</c> -1 at the head of the plan.</summary>
    public sealed record Caution(int Step, Signal Signal, Template Text) : Conclusion;

    /// <summary>Limits to check at a step (during it, when <c>During</c>).</summary>
    public sealed record Check(int Step, Test Limits, Template Text, bool During) : Conclusion;

    /// <summary>A supply to have.</summary>
    public sealed record Supply(int Step, Template Text) : Conclusion;

    /// <summary>A tool to have.</summary>
    public sealed record Tool(int Step, Template Text) : Conclusion;

    /// <summary>A detail line at a step.</summary>
    public sealed record Detail(int Step, Template Text) : Conclusion;

    /// <summary>A step that takes so many times its time.</summary>
    public sealed record Slower(int Step, ValueExpression Factor) : Conclusion;

    /// <summary>A figure without which the step is not done.</summary>
    public sealed record Figure(int Step, int Slot, FactDefinition Fact) : Conclusion;

    /// <summary>A wait between two steps; with <c>Since</c> it counts from an event before the job, whose age is the fact.</summary>
    public sealed record Wait(int From, int Until, ValueExpression? Least, ValueExpression? Most, Template? Text, (int Slot, FactDefinition Fact)? Since) : Conclusion;

    /// <summary>A finding for, against or excluding a cause.</summary>
    public sealed record Finding(Cause Cause, int Slot, Speaks Speaks, bool IsStrong) : Conclusion;

    /// <summary>The job stops here, and says why.</summary>
    public sealed record Stop(Template Text) : Conclusion;

    /// <summary>A fact that the job must know.</summary>
    public sealed record Know(int Slot, FactDefinition Fact) : Conclusion;
}
