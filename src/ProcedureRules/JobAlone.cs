using ProcedureRules.Facts;
using ProcedureRules.Quantities;

namespace ProcedureRules;

/// <summary>A job planned by itself.</summary>
/// <param name="Job">The job.</param>
/// <param name="Labour">Its labour.</param>
public sealed record JobAlone(JobRequest Job, Quantity Labour);
