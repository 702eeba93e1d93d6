namespace ProcedureRules.Shapes;

/// <summary>One way to write a value of a <see cref="OneOfShape"/>.</summary>
/// <param name="Shape">What the value looks like then.</param>
/// <param name="Key">The key whose presence means this mapping; null where the kind of value alone decides.</param>
internal sealed record Alternative(Shape Shape, string? Key = null);
