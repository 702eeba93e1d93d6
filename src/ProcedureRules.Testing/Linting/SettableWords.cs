using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Language.Nodes;
using ProcedureRules.Packs;

namespace ProcedureRules.Testing.Linting;

/// <summary>The words that a fact can be: all of them where somebody may state it, those that rules set where only rules give it.</summary>
internal sealed class SettableWords
{
    private readonly Dictionary<FactDefinition, ulong> _set = [];

    public SettableWords(LintSubject subject)
    {
        foreach (var set in subject.Conclusions.Select(entry => entry.Conclusion).OfType<Conclusion.Set>().Where(set => set.Fact.Type.IsWords))
            _set[set.Fact] = _set.GetValueOrDefault(set.Fact) | Of(set);
    }

    public ulong Of(FactDefinition fact) => fact.IsDerived ? _set.GetValueOrDefault(fact) : Value.AllWords(fact.Type);

    private static ulong Of(Conclusion.Set set) => set.Value.Node is ConstantWords words ? words.Words : Value.AllWords(set.Fact.Type);
}
