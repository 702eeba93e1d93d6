using ProcedureRules.Facts;
using ProcedureRules.Logic;
using ProcedureRules.Packs;

namespace ProcedureRules.Plans;

/// <summary>What the findings say of a cause.</summary>
/// <param name="Cause">The cause.</param>
/// <param name="Part">The part.</param>
/// <param name="Text">The words.</param>
/// <param name="Verdict">No: excluded; unknown: a rival still; yes: sure.</param>
/// <param name="For">What speaks for it.</param>
/// <param name="Against">What speaks against it.</param>
public sealed record PlanFinding(
    Cause Cause, Part Part, Wording Text, Truth Verdict, IReadOnlyList<Reason> For, IReadOnlyList<Reason> Against);
