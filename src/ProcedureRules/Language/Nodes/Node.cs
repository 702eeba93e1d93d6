using ProcedureRules.Facts;
using ProcedureRules.Packs;

namespace ProcedureRules.Language.Nodes;

/// <summary>
/// A checked expression. A tree of these evaluates without allocating; what it reads is told separately, so that beliefs know when to
/// evaluate it again.
/// </summary>
internal abstract class Node
{
    /// <summary>The expressions it is made of.</summary>
    public virtual IReadOnlyList<Node> Children => [];

    /// <summary>Adds the keys that it reads under a binding.</summary>
    public virtual void AddReads(IReadings reads, Binding binding, Func<Kind, IReadOnlyList<Part>> partsOf)
    {
        for (var i = 0; i < Children.Count; i++) Children[i].AddReads(reads, binding, partsOf);
    }

    /// <summary>Whether what it reads is known at all, so that a text may show its value.</summary>
    public virtual bool IsKnown(IBeliefs beliefs, Binding binding)
    {
        foreach (var child in Children)
            if (!child.IsKnown(beliefs, binding)) return false;
        return true;
    }

    /// <summary>It and all below it.</summary>
    public IEnumerable<Node> All() => Children.SelectMany(child => child.All()).Prepend(this);
}
