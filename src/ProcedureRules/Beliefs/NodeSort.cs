namespace ProcedureRules.Beliefs;

/// <summary>The blocks of nodes of a graph.</summary>
internal enum NodeSort
{
    Atom,
    Record,
    Contribution,
    Fact,
    Demand,
}
