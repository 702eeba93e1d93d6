using ProcedureRules.Diagnostics;
using ProcedureRules.Language.Nodes;

namespace ProcedureRules.Language.Compiling;

/// <summary>What a rule reads and what it concludes, as definitions: facts with the slot of their part, relations without.</summary>
internal sealed class RuleReads(string rule, SourceSpan span)
{
    public string Rule { get; } = rule;

    public SourceSpan Span { get; } = span;

    /// <summary>Read in a test or a value: negation and comparison need them settled first.</summary>
    public HashSet<Key> Judged { get; } = [];

    /// <summary>Relations that it matches; these may form a ring.</summary>
    public HashSet<Key> Matched { get; } = [];

    /// <summary>What it sets, demands or relates.</summary>
    public HashSet<Key> Concluded { get; } = [];

    /// <summary>Takes over what another reads and concludes.</summary>
    public void Add(RuleReads other)
    {
        Judged.UnionWith(other.Judged);
        Matched.UnionWith(other.Matched);
        Concluded.UnionWith(other.Concluded);
    }

    public void Judge(Node node)
    {
        foreach (var one in node.All())
        {
            switch (one)
            {
                case FactQuantity fact:
                    Judged.Add(new(fact.Fact, fact.Slot));
                    break;
                case FactWords fact:
                    Judged.Add(new(fact.Fact, fact.Slot));
                    break;
                case FactText fact:
                    Judged.Add(new(fact.Fact, fact.Slot));
                    break;
                case DemandedQuantity fact:
                    Judged.Add(new(fact.Fact, fact.Slot, IsDemand: true));
                    break;
                case IGathers gathers:
                    foreach (var gathered in gathers.Gathered) Judge(gathered);
                    break;
                case RelationHolds relation:
                    Judged.Add(new(relation.Relation));
                    break;
            }
        }
    }

    /// <summary>A fact of the part in a slot (below 0: of any part of a kind), a demand on one, or a relation between any parts (slot -1).</summary>
    internal readonly record struct Key(object Definition, int Slot = -1, bool IsDemand = false);
}
