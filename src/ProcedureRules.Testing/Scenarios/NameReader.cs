using System.Globalization;
using System.Text.RegularExpressions;
using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Packs;
using ProcedureRules.Testing.Expectations;
using ProcedureRules.Yaml;

namespace ProcedureRules.Testing.Scenarios;

/// <summary>Reads the names that expectations speak of, with the spelling nearest to a wrong one.</summary>
internal sealed partial class NameReader(Situation situation, DiagnosticBag bag)
{
    private readonly SituationBuilder _builder = SituationBuilder.From(situation);

    private Vocabulary Vocabulary => situation.Vocabulary;

    /// <summary>The steps that a text means, or null after a complaint.</summary>
    public StepPick? Step(YamlScalar text, int start, int length)
    {
        var match = Call().Match(text.Text.Substring(start, length));
        if (!match.Success)
        {
            bag.Add(Messages.StepForm(text.SpanAt(start, length), text.Text.Substring(start, length).Trim()));
            return null;
        }

        var (name, on, time) = (match.Groups["name"], match.Groups["part"], match.Groups["time"].Success ? int.Parse(match.Groups["time"].ValueSpan, CultureInfo.InvariantCulture) : (int?)null);
        if (!Vocabulary.Operations.TryGetValue(name.Value, out var operation))
        {
            bag.Add(Messages.UnknownName(text.SpanAt(start + name.Index, name.Length), "operation", name.Value, Vocabulary.Operations.Keys));
            return null;
        }

        if (!on.Success) return new StepPick(operation, null, time);
        var span = text.SpanAt(start + on.Index, on.Length);
        if (Part(on.Value, span) is not { } part) return null;
        if (part.Kind.IsA(operation.On)) return new StepPick(operation, part.Name, time);
        bag.Add(Messages.StepOnOtherKind(span, operation.Name, operation.On.Name, part.Name, part.Kind.Name));
        return null;
    }

    /// <summary>The steps that a whole text means, or null after a complaint.</summary>
    public StepPick? Step(YamlScalar text) => Step(text, 0, text.Text.Length);

    /// <summary>The cause of a part, or null after a complaint.</summary>
    public (Cause Cause, Part Part)? Cause(YamlScalar text)
    {
        var match = Call().Match(text.Text);
        var (name, on) = (match.Groups["name"], match.Groups["part"]);
        if (!match.Success || !on.Success || match.Groups["time"].Success)
        {
            bag.Add(Messages.CauseForm(text.Span, text.Text));
            return null;
        }

        if (!Vocabulary.Causes.TryGetValue(name.Value, out var cause))
        {
            bag.Add(Messages.UnknownName(text.SpanAt(name.Index, name.Length), "cause", name.Value, Vocabulary.Causes.Keys));
            return null;
        }

        return Part(on.Value, text.SpanAt(on.Index, on.Length)) is { } part ? (cause, part) : null;
    }

    /// <summary>The fact that a path means, a derived one or a demand too; null after a complaint.</summary>
    public FactKey? Fact(YamlScalar path)
    {
        if (PartPath.Read(path, _builder, isSilentOnAbsent: false, bag) is not { } read) return null;
        if (Vocabulary.FactOf(read.Part.Kind, read.Name) is { } fact) return new FactKey(read.Part, fact);
        bag.Add(Messages.NoSuchFact(read.NameSpan, read.Part.Name, read.Name, "fact", Vocabulary.FactsOf(read.Part.Kind).Select(known => known.Name)));
        return null;
    }

    /// <summary>The id under which something is asked for, or null after a complaint.</summary>
    public string? Question(YamlScalar text)
    {
        if (text.Text.StartsWith("part ", StringComparison.Ordinal)) return Part(text.Text[5..].Trim(), text.SpanAt(5, text.Text.Length - 5)) is { } part ? $"part {part.Name}" : null;
        if (text.Text.Contains('(', StringComparison.Ordinal))
            return RelationStatementReader.Read(text, _builder, isArchetype: false, Source.Stated, bag) is { } asked ? $"{asked.Relation.Name}({asked.A.Name}, {asked.B.Name})" : null;
        if (Forms.PathPattern.Matches(text.Text)) return Fact(text)?.ToString();
        bag.Add(Messages.QuestionForm(text.Span, text.Text));
        return null;
    }

    private Part? Part(string name, SourceSpan span) => PartNames.Find(name, span, _builder, isSilentOnAbsent: false, bag);

    [GeneratedRegex(@"\A\s*(?<name>[a-z][a-z0-9_]*)\s*(?:\(\s*(?<part>[a-z][a-z0-9_]*)\s*\))?(?:#(?<time>[1-9][0-9]?))?\s*\z", RegexOptions.CultureInvariant)]
    private static partial Regex Call();
}
