namespace ProcedureRules.Inference;

/// <summary>Something that follows from one atom by the mechanisms of planning.</summary>
internal sealed class MechanismInstance : Instance
{
    public MechanismInstance(Node origin, Record record, IReadOnlyList<Node> concluded)
    {
        Origin = origin;
        Record = record;
        Concluded = concluded;
    }

    public Node Origin { get; }

    /// <inheritdoc/>
    public override int PremiseCount => 1;
}
