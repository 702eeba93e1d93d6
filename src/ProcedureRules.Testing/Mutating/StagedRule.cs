using ProcedureRules.Language;
using ProcedureRules.Testing.Expectations;

namespace ProcedureRules.Testing.Mutating;

/// <summary>A rule at a moment of a case.</summary>
/// <param name="At">The moment.</param>
/// <param name="Rule">The rule.</param>
/// <param name="Of">The records of the rule, by their places among all records of the moment.</param>
internal sealed record StagedRule(StagedCase At, CompiledRule Rule, IReadOnlyList<int> Of)
{
    /// <summary>The moment as the case made it.</summary>
    public Stage Stage => At.Stage;
}
