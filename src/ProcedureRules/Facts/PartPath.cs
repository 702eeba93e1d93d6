using ProcedureRules.Diagnostics;
using ProcedureRules.Packs;
using ProcedureRules.Yaml;

namespace ProcedureRules.Facts;

/// <summary>A path on a sheet: a part, and the name of a fact or an aspect of it.</summary>
internal readonly record struct PartPath(Part Part, string Name, SourceSpan NameSpan)
{
    /// <summary>Reads a path, or null after a complaint.</summary>
    public static PartPath? Read(YamlScalar path, SituationBuilder builder, bool isSilentOnAbsent, DiagnosticBag bag)
    {
        // A path of the wrong form has been reported by the check of shapes.
        if (!Forms.PathPattern.Matches(path.Text))
            return null;
        var dot = path.Text.IndexOf('.', StringComparison.Ordinal);
        var part = PartNames.Find(path.Text[..dot], path.SpanAt(0, dot), builder, isSilentOnAbsent, bag);
        return part is null ? null : new PartPath(part, path.Text[(dot + 1)..], path.SpanAt(dot + 1, path.Text.Length - dot - 1));
    }

    /// <summary>The fact that is meant, or null after a complaint.</summary>
    public FactDefinition? Fact(Vocabulary vocabulary, DiagnosticBag bag)
    {
        if (vocabulary.FactOf(Part.Kind, Name) is { } fact)
        {
            if (!fact.IsDerived && !fact.IsDemand)
                return fact;
            bag.Add(Messages.NotStatable(NameSpan, $"{Part.Name}.{Name}", fact.IsDemand, fact.Span));
            return null;
        }

        bag.Add(vocabulary.AspectOf(Part.Kind, Name) is not null
            ? Messages.IsAspect(NameSpan, $"{Part.Name}.{Name}")
            : Messages.NoSuchFact(NameSpan, Part.Name, Name, "fact", NamesOf(vocabulary.Facts.Select(known => (known.Kind, known.Name)))));
        return null;
    }

    /// <summary>The aspect that is meant, or null after a complaint.</summary>
    public Aspect? Aspect(Vocabulary vocabulary, DiagnosticBag bag)
    {
        if (vocabulary.AspectOf(Part.Kind, Name) is { } aspect)
            return aspect;
        bag.Add(vocabulary.FactOf(Part.Kind, Name) is not null
            ? Messages.IsFact(NameSpan, $"{Part.Name}.{Name}")
            : Messages.NoSuchFact(NameSpan, Part.Name, Name, "aspect", NamesOf(vocabulary.Aspects.Select(known => (known.Kind, known.Name)))));
        return null;
    }

    private IEnumerable<string> NamesOf(IEnumerable<(Kind Kind, string Name)> known)
    {
        var kind = Part.Kind;
        return known.Where(owned => kind.IsA(owned.Kind)).Select(owned => owned.Name);
    }
}
