namespace ProcedureRules.Inference;

/// <summary>Counts what the rules do, and stops them where that is too much or where the caller has had enough.</summary>
internal sealed class Workload(RuleIndex index)
{
    private const int LooksPerRecord = 64;
    private const int LooksPerBreath = 1024;

    private readonly int[] _byRule = new int[index.Plans.Length];
    private readonly Dictionary<Mechanism, int> _byMechanism = [];
    private int _total;
    private long _looks;
    private int _budget;
    private CancellationToken _cancellation;

    /// <summary>Sets the bounds for what follows.</summary>
    public void Begin(int budget, CancellationToken cancellation)
    {
        _budget = budget;
        _cancellation = cancellation;
        _looks = 0;
    }

    /// <summary>One ground fact was looked at; a join can look at many and find nothing.</summary>
    public void Breathe()
    {
        if (++_looks % LooksPerBreath != 0) return;
        _cancellation.ThrowIfCancellationRequested();
        if (_looks / LooksPerRecord > _budget) throw new BudgetExceededException();
    }

    /// <summary>An instance came (1) or went (-1).</summary>
    public void Count(Instance instance, int change)
    {
        _total += change;
        if (instance is RuleInstance { Plan: var plan }) _byRule[plan.Ordinal] += change;
        else _byMechanism[instance.Record!.Mechanism] = _byMechanism.GetValueOrDefault(instance.Record.Mechanism) + change;
        if (_total > _budget) throw new BudgetExceededException();
    }

    /// <summary>The rules with the most instances, the busiest first.</summary>
    public IEnumerable<(string Name, int Count)> Busiest(int most) => _byRule
        .Select((count, ordinal) => (index.Plans[ordinal].Rule.Name, Count: count))
        .Where(entry => entry.Count > 0)
        .OrderByDescending(entry => entry.Count)
        .ThenBy(entry => entry.Name, StringComparer.Ordinal)
        .Take(most);
}
