using ProcedureRules.Diagnostics;

namespace ProcedureRules.Facts;

/// <summary>A way of a choice that the technician has fixed, by the ids that a plan prints.</summary>
/// <param name="Choice">The choice: <c>engine.hold</c>.</param>
/// <param name="Way">The way taken: <c>jack_boss</c>.</param>
/// <param name="ChoiceSpan">Where the choice is written.</param>
/// <param name="WaySpan">Where the way is written.</param>
public sealed record FixedWay(string Choice, string Way, SourceSpan ChoiceSpan = default, SourceSpan WaySpan = default)
{
    /// <summary>The statement: <c>engine.hold=jack_boss</c>.</summary>
    public override string ToString() => $"{Choice}={Way}";
}
