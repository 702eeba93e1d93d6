using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Logic;
using ProcedureRules.Packs;

namespace ProcedureRules.Beliefs;

/// <summary>A change of one input of the belief network: a changed statement or a choice taken or supposed.</summary>
public abstract record Supposition
{
    private Supposition() { }

    /// <summary>The observations of a fact are these (none: unknown).</summary>
    public sealed record Observed(FactKey Key, IReadOnlyList<Observation> Observations) : Supposition;

    /// <summary>The statements on a part's existence come to this.</summary>
    public sealed record PartExists(Part Part, Truth Truth, Source Source = Source.Measured) : Supposition;

    /// <summary>The statements on a relation come to this.</summary>
    public sealed record RelationHolds(Relation Relation, Part A, Part B, Truth Truth, Source Source = Source.Measured) : Supposition;

    /// <summary>A job is asked for, or is not.</summary>
    public sealed record JobAsked(JobRequest Request, Truth Truth) : Supposition;

    /// <summary>An option of a choice is taken (null: the choice is open again).</summary>
    public sealed record Takes(ChoiceKey Choice, int? Option) : Supposition;
}
