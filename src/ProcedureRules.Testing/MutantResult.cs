using ProcedureRules.Diagnostics;

namespace ProcedureRules.Testing;

/// <summary>A change of one thing in a rule, and whether a scenario noticed it.</summary>
/// <param name="Id">Its name, the same as long as the packs are.</param>
/// <param name="Pack">The pack.</param>
/// <param name="Rule">The rule.</param>
/// <param name="Span">Where what is changed is written.</param>
/// <param name="Change">What is changed.</param>
/// <param name="Due">The scenario that would notice.</param>
/// <param name="Outcome">What came of it.</param>
/// <param name="By">The case that noticed it; null where none did.</param>
/// <param name="Ground">Why nobody noticed it; null where somebody did, or its rule matches nowhere.</param>
public sealed record MutantResult(string Id, string Pack, string Rule, SourceSpan Span, string Change, string Due, MutantOutcome Outcome, string? By, string? Ground = null);
