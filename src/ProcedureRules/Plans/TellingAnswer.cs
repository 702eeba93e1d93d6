namespace ProcedureRules.Plans;

/// <summary>What an answer would say of the causes that are still possible.</summary>
/// <param name="Answer">The answer.</param>
/// <param name="Confirms">The causes it would make sure.</param>
/// <param name="RulesOut">The causes it would rule out.</param>
public sealed record TellingAnswer(Wording Answer, IReadOnlyList<Wording> Confirms, IReadOnlyList<Wording> RulesOut);
