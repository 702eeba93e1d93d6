using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Packs;

namespace ProcedureRules.Inference;

/// <summary>What a choice is about: a <c>one_of</c> of a rule instance, or the ways to a wanted state.</summary>
public abstract record ChoiceKey
{
    private ChoiceKey() { }

    /// <summary>
    /// A <c>one_of</c>: the rule, its instance, and which of its conclusions; those inside an option count on behind the rule's own, in the
    /// order they are written.
    /// </summary>
    public sealed record OfRule(CompiledRule Rule, Binding Binding, int Conclusion) : ChoiceKey
    {
        /// <summary>The options.</summary>
        public IReadOnlyList<Option> Options => Choices.At(Rule, Conclusion).Options;
    }

    /// <summary>Several operations reach a wanted state.</summary>
    public sealed record OfWays(Part Part, Aspect Aspect, StateSet States) : ChoiceKey;
}
