using System.Collections.Concurrent;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;

namespace ProcedureRules.Beliefs;

/// <summary>Finds effects by what they conclude and which step they are attached to; atoms by type.</summary>
internal sealed class EffectIndex
{
    private readonly Dictionary<Atom, List<RecordEffect>> _byAtom = [];
    private readonly Dictionary<Type, List<RecordEffect>> _byConclusion = [];
    private readonly Dictionary<Step, List<RecordEffect>> _byStep = [];
    private readonly Dictionary<Step, List<RecordEffect>> _forbidding = [];
    private readonly Dictionary<Part, List<RecordEffect>> _forbiddenStates = [];
    private readonly Dictionary<FactKey, List<RecordEffect>> _setting = [];
    private readonly NodeIndex _nodes;
    private readonly ConcurrentDictionary<Type, object> _atoms = [];

    public EffectIndex(NodeIndex nodes)
    {
        _nodes = nodes;
        foreach (var record in nodes.Records)
        {
            for (var e = 0; e < record.Effects.Count; e++)
            {
                var effect = new RecordEffect(record, e);
                if (effect.Effect.Atom is { } atom) Add(_byAtom, atom, effect);
                if (effect.Effect.Conclusion is not { } conclusion) continue;
                Add(_byConclusion, conclusion.GetType(), effect);
                if (effect.Effect.Fact is { } fact) Add(_setting, fact, effect);
                var (first, second) = StepsOf(conclusion);
                if (first >= 0) Add(_byStep, record.Binding.Step(first), effect);
                if (second >= 0 && !(first >= 0 && record.Binding.Step(second).Equals(record.Binding.Step(first)))) Add(_byStep, record.Binding.Step(second), effect);
            }
        }
        foreach (var source in With(typeof(Conclusion.ForbidStep)))
            Add(_forbidding, source.Record.Binding.Step(((Conclusion.ForbidStep)source.Effect.Conclusion!).Step), source);
        foreach (var source in With(typeof(Conclusion.ForbidWork)))
        {
            var work = (Conclusion.ForbidWork)source.Effect.Conclusion!;
            Add(_forbidding, new Step(work.Operation, source.Record.Binding.Part(work.Slot)), source);
        }
        foreach (var source in With(typeof(Conclusion.ForbidState)))
            Add(_forbiddenStates, source.Record.Binding.Part(((Conclusion.ForbidState)source.Effect.Conclusion!).State.Slot), source);
    }

    public IReadOnlyList<RecordEffect> Supporting(Atom atom) => _byAtom.GetValueOrDefault(atom, []);

    public IReadOnlyList<RecordEffect> With(Type conclusion) => _byConclusion.GetValueOrDefault(conclusion, []);

    public IReadOnlyList<RecordEffect> About(Step step) => _byStep.GetValueOrDefault(step, []);

    public IReadOnlyList<RecordEffect> Setting(FactKey key) => _setting.GetValueOrDefault(key, []);

    public IReadOnlyList<RecordEffect> Forbidding(Step step) => _forbidding.GetValueOrDefault(step, []);

    public IReadOnlyList<RecordEffect> ForbiddingStatesOf(Part part) => _forbiddenStates.GetValueOrDefault(part, []);

    public IReadOnlyList<TAtom> AtomsOf<TAtom>() where TAtom : Atom =>
        (TAtom[])_atoms.GetOrAdd(typeof(TAtom), static (_, nodes) => nodes.Atoms.OfType<TAtom>().ToArray(), _nodes);

    private static (int First, int Second) StepsOf(Conclusion conclusion) => conclusion switch
    {
        Conclusion.Need c => (c.Step, -1),
        Conclusion.Order c => (c.First, c.Second),
        Conclusion.ForbidStep c => (c.Step, -1),
        Conclusion.Do c => (c.Before, c.After),
        Conclusion.Caution c => (c.Step, -1),
        Conclusion.Check c => (c.Step, -1),
        Conclusion.Supply c => (c.Step, -1),
        Conclusion.Tool c => (c.Step, -1),
        Conclusion.Detail c => (c.Step, -1),
        Conclusion.Slower c => (c.Step, -1),
        Conclusion.Figure c => (c.Step, -1),
        Conclusion.Wait c => (c.From, c.Until),
        _ => (-1, -1),
    };

    private static void Add<TKey, TItem>(Dictionary<TKey, List<TItem>> lists, TKey key, TItem item)
        where TKey : notnull
    {
        if (!lists.TryGetValue(key, out var list)) lists[key] = list = [];
        list.Add(item);
    }
}
