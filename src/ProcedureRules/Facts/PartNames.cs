using ProcedureRules.Diagnostics;
using ProcedureRules.Logic;

namespace ProcedureRules.Facts;

/// <summary>Finds the part that a name stands for: its own name, or that of a kind of which there is one part.</summary>
internal static class PartNames
{
    /// <summary>The part, or null after a complaint (or where its own statement has been complained about).</summary>
    /// <param name="name">The name as written.</param>
    /// <param name="span">Where it is written.</param>
    /// <param name="builder">What is stated so far.</param>
    /// <param name="isSilentOnAbsent">
    /// Whether a part that is not there is passed over in silence: an archetype may speak of parts that the sheet takes away.
    /// </param>
    /// <param name="bag">Takes what is wrong.</param>
    public static Part? Find(string name, SourceSpan span, SituationBuilder builder, bool isSilentOnAbsent, DiagnosticBag bag)
    {
        if (builder.Find(name) is { } part)
        {
            var statement = builder.StatementOn(part);
            if (statement.Exists != Truth.No)
                return part;
            if (!isSilentOnAbsent)
                bag.Add(Messages.PartIsAbsent(span, name, statement.Span));
            return null;
        }

        if (builder.IsBroken(name))
            return null;
        if (!builder.Vocabulary.Kinds.TryGetValue(name, out var kind))
        {
            if (!builder.HasGaps)
                bag.Add(Messages.UnknownPart(span, name, builder.Parts.Select(known => known.Name)));
            return null;
        }

        var parts = builder.PartsOf(kind).ToList();
        if (parts.Count == 1)
            return parts[0];
        if (parts.Count > 1)
            bag.Add(Messages.SeveralParts(span, name, parts.Select(known => known.Name)));
        else if (!isSilentOnAbsent && !builder.HasGaps)
            bag.Add(Messages.NoPartOfKind(span, name));
        return null;
    }
}
