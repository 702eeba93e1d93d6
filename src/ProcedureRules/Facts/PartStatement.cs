using ProcedureRules.Diagnostics;
using ProcedureRules.Logic;

namespace ProcedureRules.Facts;

/// <summary>One statement that the vehicle has a part, has not, or that it is not known.</summary>
public sealed record PartStatement(Part Part, Truth Exists, Source Source, SourceSpan Span = default);
