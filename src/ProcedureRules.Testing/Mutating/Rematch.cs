using ProcedureRules.Language;

namespace ProcedureRules.Testing.Mutating;

/// <summary>The rules to match anew with once a rule may match more than before.</summary>
/// <param name="All">All rules, the changed one among them.</param>
/// <param name="Changed">The changed rule by itself.</param>
internal sealed record Rematch(RuleBase All, RuleBase Changed);
