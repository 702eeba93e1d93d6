namespace ProcedureRules.Inference;

/// <summary>Walks from the inputs over everything that stands: what is not reached holds itself up in a ring.</summary>
internal static class RingSweep
{
    /// <summary>The atoms that are supported but not reached from the inputs.</summary>
    public static IReadOnlyList<Node> Unreached(NodeTable nodes, IEnumerable<Node> inputs, int sweep)
    {
        var open = new Stack<Node>();
        foreach (var input in inputs) Reach(input);
        while (open.TryPop(out var node))
        {
            foreach (var ground in node.Grounds)
            {
                // A fact that also needs a part is counted once, with its step.
                if (!ReferenceEquals(ground.Source, node)) continue;
                foreach (var user in ground.Users) Premise(user);
            }
            foreach (var instance in node.Mechanisms) Premise(instance);
        }
        return [.. nodes.All.Where(node => node.Supports > 0 && node.Sweep != sweep)];

        void Reach(Node node)
        {
            if (node.Sweep == sweep) return;
            node.Sweep = sweep;
            open.Push(node);
        }

        void Premise(Instance instance)
        {
            if (!instance.IsShown) return;
            if (instance.Sweep != sweep)
            {
                instance.Sweep = sweep;
                instance.Missing = instance.PremiseCount;
            }
            if (--instance.Missing > 0) return;
            foreach (var concluded in instance.Concluded) Reach(concluded);
        }
    }
}
