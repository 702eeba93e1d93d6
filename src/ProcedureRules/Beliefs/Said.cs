namespace ProcedureRules.Beliefs;

/// <summary>What a record says of a step, and how firmly.</summary>
/// <param name="Source">The effect.</param>
/// <param name="Level">How firmly it stands once the step occurs, where conditions on moments are taken as met.</param>
internal readonly record struct Said(RecordEffect Source, Assurance Level);
