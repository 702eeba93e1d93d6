using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;

namespace ProcedureRules.Explaining;

/// <summary>A fact, relation or part that is supposed otherwise than it is.</summary>
/// <param name="Id">The id, as <c>--set</c> takes it.</param>
/// <param name="Text">What it would have to be; of a figure the whole stretch that does.</param>
/// <param name="Supposition">The supposition, with one figure of the stretch.</param>
public sealed record SupposedFact(string Id, Wording Text, Supposition Supposition)
{
    /// <summary>The supposition as <c>--set</c> and <c>what-if</c> take it.</summary>
    public string Statement => $"{Id}={Supposition switch
    {
        Supposition.Observed { Observations: [var observation] } => SheetWriter.Write(observation.Value, UnitSystem.Us),
        Supposition.RelationHolds holds => AtomTexts.Word(holds.Truth),
        Supposition.PartExists exists => AtomTexts.Word(exists.Truth),
        _ => "unknown",
    }}";
}
