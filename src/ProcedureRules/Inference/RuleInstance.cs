using ProcedureRules.Language;

namespace ProcedureRules.Inference;

/// <summary>A rule whose conditions that bind are met by these ground facts.</summary>
internal sealed class RuleInstance(RulePlan plan, Binding binding, Ground[] grounds) : Instance
{
    public RulePlan Plan { get; } = plan;
    public Binding Binding { get; } = binding;
    public Ground[] Grounds { get; } = grounds;

    /// <inheritdoc/>
    public override int PremiseCount => Grounds.Length;
}
