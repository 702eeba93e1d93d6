using ProcedureRules.Diagnostics;
using ProcedureRules.Logic;
using ProcedureRules.Packs;

namespace ProcedureRules.Facts;

/// <summary>One statement that a relation holds between two parts, does not, or is not known.</summary>
public sealed record RelationStatement(Relation Relation, Part A, Part B, Truth Holds, Source Source, SourceSpan Span = default);
