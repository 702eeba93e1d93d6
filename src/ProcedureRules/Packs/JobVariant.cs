namespace ProcedureRules.Packs;

/// <summary>A form of a job that a fact selects.</summary>
/// <param name="If">The condition that selects it.</param>
/// <param name="Text">The words a technician reads.</param>
/// <param name="Ends">End states it adds.</param>
/// <param name="Work">Operations it adds.</param>
public sealed record JobVariant(Snippet If, string Text, IReadOnlyList<Snippet> Ends, IReadOnlyList<Snippet> Work);
