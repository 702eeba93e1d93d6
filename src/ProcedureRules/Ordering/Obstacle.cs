using ProcedureRules.Beliefs;

namespace ProcedureRules.Ordering;

/// <summary>Something that keeps a step from being done at a moment.</summary>
/// <param name="Wanted">The state that would have to be, where one would help.</param>
/// <param name="Earlier">The step that would have to be done before, where one would help.</param>
/// <param name="Source">The effect behind it, where there is one.</param>
/// <param name="Kept">The <c>while</c> behind it, where there is one.</param>
internal readonly record struct Obstacle(Guard? Wanted, Work? Earlier, RecordEffect? Source, Keeping? Kept);
