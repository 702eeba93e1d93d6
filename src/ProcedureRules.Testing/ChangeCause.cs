namespace ProcedureRules.Testing;

/// <summary>What changes in plans for one reason.</summary>
/// <param name="Changes">
/// The change of the packs behind it. Several: one of those or some together, since they are at work in these plans and none stands behind the
/// effects by itself. None: no change of the packs was found at work.
/// </param>
/// <param name="IsTraced">Whether the change was found among what explains the effects, or only at work in the same plans.</param>
/// <param name="Effects">What changes in plans.</param>
public sealed record ChangeCause(IReadOnlyList<PackChange> Changes, bool IsTraced, IReadOnlyList<PlanEffect> Effects);
