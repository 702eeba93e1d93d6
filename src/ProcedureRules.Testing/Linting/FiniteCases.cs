using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Language.Nodes;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Testing.Linting;

/// <summary>
/// The cases that conditions tell apart, gone through one by one: each word, each figure at which a comparison turns and one between each
/// two. What holds in all of them always holds, what holds in none never does. Conditions that reckon are left out: they may be either.
/// </summary>
internal sealed class FiniteCases
{
    // Beyond it nothing is said; rules of the trade have a few facts each.
    private const int MostCases = 20_000;

    private readonly List<TruthNode> _conditions;
    private readonly List<Action<PointBeliefs, int>> _set = [];
    private readonly List<int> _counts = [];
    private readonly Binding _binding;

    /// <param name="rule">The rule whose variables the conditions read.</param>
    /// <param name="conditions">The conditions.</param>
    /// <param name="wordsOf">The words that a fact can be.</param>
    public FiniteCases(CompiledRule rule, IEnumerable<TruthNode> conditions, Func<FactDefinition, ulong> wordsOf)
    {
        _conditions = [.. conditions.Where(IsPlain)];
        _binding = PointBeliefs.Bind(rule);
        var nodes = _conditions.SelectMany(condition => condition.All()).ToList();
        foreach (var (slot, fact) in nodes.OfType<FactWords>().Select(node => (node.Slot, node.Fact)).Distinct())
        {
            var words = Enumerable.Range(0, fact.Type.Words.Count).Where(word => (wordsOf(fact) >> word & 1) != 0).Select(word => Value.OfWords(fact.Type, 1UL << word));
            Add([.. words], (beliefs, value) => beliefs.Values[(slot, fact)] = value);
        }

        foreach (var (slot, fact) in nodes.OfType<FactQuantity>().Select(node => (node.Slot, node.Fact)).Distinct())
            Add([.. Figures(slot, fact, nodes).Select(figure => Value.Of(fact.Type, Quantity.Point(figure, fact.Type.Dimension!.Value)))], (beliefs, value) => beliefs.Values[(slot, fact)] = value);
        foreach (var key in nodes.OfType<RelationHolds>().Select(node => (node.Relation, node.First, node.Second)).Distinct())
            Add([Truth.Yes, Truth.No], (beliefs, truth) => beliefs.Relations[key] = truth);
    }

    /// <summary>Whether the conditions never hold together.</summary>
    public bool NeverHold => IsComparable && Cases().All(beliefs => _conditions.Exists(condition => condition.Evaluate(beliefs, _binding) != Truth.Yes));

    /// <summary>Whether the conditions hold in every case.</summary>
    public bool AlwaysHold => IsComparable && Cases().All(beliefs => _conditions.TrueForAll(condition => condition.Evaluate(beliefs, _binding) == Truth.Yes));

    private bool IsComparable => _conditions.Count > 0 && _counts.Count > 0 && _counts.Aggregate(1L, (all, count) => Math.Min(all * count, MostCases + 1L)) is > 0 and <= MostCases;

    private void Add<T>(T[] values, Action<PointBeliefs, T> set)
    {
        _counts.Add(values.Length);
        _set.Add((beliefs, index) => set(beliefs, values[index]));
    }

    private IEnumerable<PointBeliefs> Cases()
    {
        var at = new int[_counts.Count];
        var beliefs = new PointBeliefs();
        do
        {
            for (var i = 0; i < at.Length; i++) _set[i](beliefs, at[i]);
            yield return beliefs;
        }
        while (Next(at));
    }

    private bool Next(int[] at)
    {
        for (var i = 0; i < at.Length; i++)
        {
            if (++at[i] < _counts[i]) return true;
            at[i] = 0;
        }

        return false;
    }

    // Those at which a comparison turns, one between each two and one beyond either end, as far as they can occur.
    private static IEnumerable<double> Figures(int slot, FactDefinition fact, IReadOnlyList<Node> nodes)
    {
        var occurs = fact.Plausible ?? Quantity.Anything(fact.Type.Dimension!.Value);
        var turns = nodes.OfType<Comparison>().SelectMany(node => Turns(slot, fact, node)).Where(double.IsFinite).Append(occurs.Low).Append(occurs.High)
            .Where(figure => double.IsFinite(figure) && occurs.Low <= figure && figure <= occurs.High).Distinct().Order().ToList();
        if (turns.Count == 0) return [0];
        return turns.Concat(turns.Zip(turns.Skip(1), (low, high) => (low + high) / 2)).Concat(Beyond(turns, occurs));
    }

    private static IEnumerable<double> Beyond(List<double> turns, Quantity occurs)
    {
        if (!double.IsFinite(occurs.Low)) yield return turns[0] - 1;
        if (!double.IsFinite(occurs.High)) yield return turns[^1] + 1;
    }

    private static IEnumerable<double> Turns(int slot, FactDefinition fact, Comparison node) => node switch
    {
        QuantityComparison { Left: FactQuantity read, Right: ConstantQuantity bound } when read.Slot == slot && read.Fact == fact => [bound.Value.Low, bound.Value.High],
        QuantityComparison { Left: ConstantQuantity bound, Right: FactQuantity read } when read.Slot == slot && read.Fact == fact => [bound.Value.Low, bound.Value.High],
        RangeComparison { Operand: FactQuantity read } range when read.Slot == slot && read.Fact == fact => [range.Range.Low, range.Range.High],
        _ => [],
    };

    private static bool IsPlain(TruthNode condition) => condition.All().All(node => node switch
    {
        Conjunction or Disjunction or Negation or ConstantTruth or YesNoTruth { Operand: FactWords } or RelationHolds => true,
        WordComparison { Operand: FactWords } or FactWords or ConstantWords or ConstantQuantity => true,
        RangeComparison { Operand: FactQuantity } => true,
        FactQuantity { Slot: >= 0 } => true,
        QuantityComparison { Left: FactQuantity or ConstantQuantity, Right: FactQuantity or ConstantQuantity } comparison => comparison.Left is ConstantQuantity || comparison.Right is ConstantQuantity,
        _ => false,
    });
}
