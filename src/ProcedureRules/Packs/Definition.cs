using ProcedureRules.Diagnostics;

namespace ProcedureRules.Packs;

/// <summary>What a name stands for and where it is defined; the item is null where it could not be read.</summary>
internal sealed record Definition<T>(T? Item, string Pack, SourceSpan Span)
    where T : class;
