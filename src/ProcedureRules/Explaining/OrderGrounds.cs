using ProcedureRules.Inference;
using ProcedureRules.Plans;
using ProcedureRules.Validating;

namespace ProcedureRules.Explaining;

/// <summary>Why one step of a plan comes before another: what binds the two, or the steps between them that do.</summary>
internal sealed class OrderGrounds
{
    private readonly Plan _plan;
    private readonly ItemTrees _trees;
    private readonly PlanLaws _laws;
    private readonly Dictionary<string, PlanStep> _steps;

    public OrderGrounds(Plan plan, ItemTrees trees)
    {
        (_plan, _trees) = (plan, trees);
        _laws = new PlanLaws(plan.Beliefs, [.. plan.Steps.Select(step => step.Step)]);
        _steps = plan.Steps.ToDictionary(step => step.Id);
    }

    /// <summary>What binds them.</summary>
    public IEnumerable<WhyNode> Of(PlanStep first, PlanStep second)
    {
        if (Path(first, second) is not { } path)
            return [WhyNode.Leaf(WhyNodeSort.Declaration, "nothing binds the two: they may change places; the plan goes by the part of the work, then by place")];
        if (path.Count == 2) return Between(first, second);
        return path.Zip(path.Skip(1), (one, next) => new WhyNode(WhyNodeSort.Item, PlanContents.Order(one, next).Text, [.. Between(one, next)])).ToList();
    }

    // The fewest steps from one to the other, each bound to the next.
    private List<PlanStep>? Path(PlanStep first, PlanStep second)
    {
        var (next, open) = (new Dictionary<string, string?> { [second.Id] = null }, new Queue<PlanStep>([second]));
        while (open.TryDequeue(out var step))
        {
            if (step == first) break;
            foreach (var id in step.After)
                if (next.TryAdd(id, step.Id)) open.Enqueue(_steps[id]);
        }

        if (!next.ContainsKey(first.Id)) return null;
        var path = new List<PlanStep>();
        for (string? id = first.Id; id is not null; id = next[id]) path.Add(_steps[id]);
        return path;
    }

    private List<WhyNode> Between(PlanStep first, PlanStep second)
    {
        var bonds = new List<WhyNode>();
        if (second.Step.Operation.Undoes == first.Step.Operation && second.Step.Part == first.Step.Part)
            bonds.Add(Declared(second, new Wording(units => $"\"{second.Text.In(units)}\" undoes \"{first.Text.In(units)}\"")));
        foreach (var (before, made) in first.Changes)
        {
            bonds.AddRange(second.Changes.Where(change => change.Before == made).Select(_ => Declared(second, new Wording($"it starts from what the other leaves: {Words.State(made)}"))));
            bonds.AddRange(Needs(second, made, true));
            bonds.AddRange(_laws.Whiles.Where(law => IsIn(made, law.Kept) && second.Changes.Any(change => IsIn(change.After, law.While)))
                .Concat(_laws.Whiles.Where(law => IsIn(before, law.While) && !IsIn(made, law.While) && second.Changes.Any(change => IsIn(change.Before, law.Kept) && !IsIn(change.After, law.Kept))))
                .Select(law => WhyNode.Leaf(WhyNodeSort.Declaration, $"this has to be kept all the while: {Words.Name(law.Text)}")));
        }

        foreach (var (spoiled, after) in second.Changes)
        {
            bonds.AddRange(Needs(first, spoiled, false).Where(_ => spoiled != after));
            bonds.AddRange(_laws.Whiles.Where(law => IsIn(spoiled, law.Kept) && !IsIn(after, law.Kept) && first.Changes.Any(change => IsIn(change.After, law.While)))
                .Select(law => WhyNode.Leaf(WhyNodeSort.Declaration, $"this has to be kept all the while: {Words.Name(law.Text)}")));
        }

        bonds.AddRange(_laws.OrdersOf(second.Step).Where(order => order.First.Equals(first.Step)).Select(order => _trees.Of(order.Record)));
        bonds.AddRange(second.Waits.Where(wait => wait.AfterStep == first.Id).Select(wait => _trees.Of(wait.Reason.Record)));
        bonds.AddRange(_plan.Questions.Where(question => question.AtStep == first.Id && (second.Provisional.Count > 0 || second.Holds.Any(hold => hold.Questions.Contains(question.Id))))
            .Select(question => new WhyNode(WhyNodeSort.Rule, new Wording(units => $"it finds out what the other hangs on: {question.Text.In(units)}"), [_trees.Of(question.About)])));
        return [.. bonds.DistinctBy(bond => (bond.Rule, bond.Text.ToString()))];
    }

    // A need that a state meets; told by the step that has it. Of several rules with the same need one is unfolded: what it tells is not told again.
    private IEnumerable<WhyNode> Needs(PlanStep step, GroundState state, bool isMade) =>
        from need in _laws.NeedsOf(step.Step).Where(need => IsIn(state, need.State)).DistinctBy(need => Words.State(need.State))
        let text = new Wording(units => $"\"{step.Text.In(units)}\" needs: {Words.State(need.State)}{(isMade ? "" : ", which the other ends")}")
        select new WhyNode(WhyNodeSort.Want, text, [_trees.Of(need.Record)]);

    private static bool IsIn(GroundState state, GroundState wanted) =>
        state.Part == wanted.Part && ReferenceEquals(state.Aspect, wanted.Aspect) && (state.States.Bits & ~wanted.States.Bits) == 0;

    private static WhyNode Declared(PlanStep step, Wording text) =>
        new(WhyNodeSort.Declaration, text, []) { Rule = $"operation {step.Step.Operation.Name}", Pack = step.Step.Operation.Pack, Basis = step.Step.Operation.Basis };
}
