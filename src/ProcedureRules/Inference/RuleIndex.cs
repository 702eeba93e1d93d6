using System.Runtime.CompilerServices;
using ProcedureRules.Language;
using ProcedureRules.Packs;

namespace ProcedureRules.Inference;

/// <summary>
/// From predicates to the conditions that read them, and what parts and steps give for these predicates. Made once for a rule base and
/// shared by its sessions; immutable.
/// </summary>
internal sealed class RuleIndex
{
    /// <summary>The predicate of rules without any condition that binds. No condition of a pack can name it.</summary>
    public static readonly Predicate Always = new(PredicateSort.Step, "", "always");

    private static readonly ConditionalWeakTable<RuleBase, RuleIndex> Known = [];

    private readonly Dictionary<Predicate, int> _numbers = [];
    private readonly Dictionary<Kind, int[]> _kinds = [];
    private readonly Dictionary<Operation, OperationProfile> _operations = [];
    private readonly Dictionary<CompiledRule, int> _ordinals = new(ReferenceEqualityComparer.Instance);
    private readonly ReaderSet[] _readers;

    private RuleIndex(RuleBase rules)
    {
        Rules = rules;
        Plans = new RulePlan[rules.Rules.Count];
        for (var i = 0; i < Plans.Length; i++)
        {
            Plans[i] = new RulePlan(rules.Rules[i], i, Number);
            _ordinals[rules.Rules[i]] = i;
        }
        MostVariables = Plans.Select(plan => plan.Rule.Variables.Count).DefaultIfEmpty().Max();
        MostPatterns = Plans.Select(plan => plan.Patterns.Length).DefaultIfEmpty().Max();
        _readers = [.. Enumerable.Range(0, _numbers.Count).Select(_ => new ReaderSet())];
        Indexes = new GroundIndexes[_numbers.Count];
        foreach (var plan in Plans)
            for (var i = 0; i < plan.Patterns.Length; i++)
            {
                var steps = plan.StepsFrom(i);
                _readers[plan.Patterns[i].Predicate].Add(new Reader(plan, i, steps));
                foreach (var step in steps) Indexes[plan.Patterns[step.Pattern].Predicate] |= Needed(step.Access);
            }
        foreach (var kind in rules.Vocabulary.Kinds.Values)
            _kinds[kind] = [.. kind.Lineage().Select(k => NumberOf(new(PredicateSort.Part, k.Name))).Where(number => number >= 0)];
        foreach (var operation in rules.Vocabulary.Operations.Values)
            _operations[operation] = new OperationProfile(operation, NumberOf);
        TouchedOrMoved = _operations.Values.SelectMany(profile => profile.Others).Select(other => other.Kind).ToHashSet();

        int Number(Predicate predicate)
        {
            if (!_numbers.TryGetValue(predicate, out var number)) _numbers.Add(predicate, number = _numbers.Count);
            return number;
        }
    }

    public RuleBase Rules { get; }
    public RulePlan[] Plans { get; }
    public int MostVariables { get; }
    public int MostPatterns { get; }
    public int PredicateCount => _readers.Length;

    /// <summary>The indexes that joins need of each predicate.</summary>
    public GroundIndexes[] Indexes { get; }

    /// <summary>The kinds that some operation touches or moves besides the part it works on.</summary>
    public IReadOnlySet<Kind> TouchedOrMoved { get; }

    public static RuleIndex Of(RuleBase rules) => Known.GetValue(rules, static key => new RuleIndex(key));

    public ReaderSet ReadersOf(int predicate) => _readers[predicate];

    /// <summary>The number of a predicate, or -1 where no rule reads it.</summary>
    public int NumberOf(Predicate predicate) => _numbers.GetValueOrDefault(predicate, -1);

    /// <summary>The predicates that a part of the kind meets, as far as rules read them.</summary>
    public int[] OfKind(Kind kind) => _kinds[kind];

    public OperationProfile Of(Operation operation) => _operations[operation];

    public int OrdinalOf(CompiledRule rule) => _ordinals[rule];

    private static GroundIndexes Needed(JoinAccess access) => access switch
    {
        JoinAccess.Exact => GroundIndexes.Exact,
        JoinAccess.ByFirst => GroundIndexes.ByFirst,
        JoinAccess.BySecond => GroundIndexes.BySecond,
        _ => GroundIndexes.All,
    };
}
