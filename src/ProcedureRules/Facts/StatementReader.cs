using ProcedureRules.Diagnostics;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Yaml;

namespace ProcedureRules.Facts;

/// <summary>
/// Reads single statements, as a person types them: <c>oil_pan.drop_available=2 in</c>, <c>vehicle.height=raised</c>,
/// <c>covers(dust_cover, oil_pan)=no</c>, <c>part oil_cooler=yes</c>.
/// </summary>
internal static class StatementReader
{
    private const string PartWord = "part ";
    private const string SureWord = "sure ";

    /// <summary>The situation with a statement added to it, or null after a complaint.</summary>
    /// <param name="text">The statement; <c>unknown</c> takes back what was said before.</param>
    /// <param name="situation">What holds so far.</param>
    /// <param name="source">Where the statement comes from; of one source, the last statement counts.</param>
    /// <param name="bag">Takes what is wrong.</param>
    public static Situation? Apply(string text, Situation situation, Source source, DiagnosticBag bag)
    {
        var file = new SourceFile("statement", text);
        var equals = file.Text.IndexOf('=', StringComparison.Ordinal);
        if (equals < 0)
        {
            bag.Add(Messages.StatementForm(file.Span(0, file.Text.Length), file.Text));
            return null;
        }

        var subject = Piece(file, 0, equals);
        var answer = Piece(file, equals + 1, file.Text.Length);
        var builder = SituationBuilder.From(situation);
        builder.AddSilentParts();
        var isRead = subject.Text.StartsWith(PartWord, StringComparison.Ordinal) ? StatePart(subject, answer, source, builder, bag)
            : subject.Text.Contains('(', StringComparison.Ordinal) ? StateRelation(subject, answer, source, builder, bag)
            : StatePath(subject, answer, source, builder, bag);
        return isRead ? builder.Build(situation.Title) : null;
    }

    private static bool StatePart(YamlScalar subject, YamlScalar answer, Source source, SituationBuilder builder, DiagnosticBag bag)
    {
        var lead = subject.Text.Length - subject.Text[PartWord.Length..].TrimStart().Length;
        var name = new YamlScalar(subject.SpanAt(lead, subject.Text.Length - lead), subject.Text[lead..], YamlStyle.Plain);
        if (Answer(answer, bag) is not { } exists)
            return false;
        var part = builder.Find(name.Text) ?? (builder.Vocabulary.Kinds.TryGetValue(name.Text, out var kind) ? new Part(name.Text, kind) : null);
        if (part is null)
            bag.Add(Messages.NeitherPartNorKind(name.Span, name.Text, builder.Parts.Select(known => known.Name).Concat(builder.Vocabulary.Kinds.Keys)));
        else if (part.Name == Vocabulary.VehicleKind)
            bag.Add(Messages.OneVehicle(name.Span));
        else
            builder.State(new PartStatement(part, exists, source, name.Span));
        return part is not null && part.Name != Vocabulary.VehicleKind;
    }

    private static bool StateRelation(YamlScalar subject, YamlScalar answer, Source source, SituationBuilder builder, DiagnosticBag bag)
    {
        if (Answer(answer, bag) is not { } holds || RelationStatementReader.Read(subject, builder, isArchetype: false, source, bag) is not { } statement)
            return false;
        builder.State(statement with { Holds = statement.Holds == Truth.No ? Kleene.Not(holds) : holds });
        return true;
    }

    private static bool StatePath(YamlScalar subject, YamlScalar answer, Source source, SituationBuilder builder, DiagnosticBag bag)
    {
        if (!Forms.PathPattern.Matches(subject.Text) || answer.Text.Length == 0)
        {
            var text = subject.Span.File!;
            bag.Add(Messages.StatementForm(text.Span(0, text.Text.Length), text.Text));
            return false;
        }

        if (PartPath.Read(subject, builder, isSilentOnAbsent: false, bag) is not { } path)
            return false;
        if (builder.Vocabulary.AspectOf(path.Part.Kind, path.Name) is { } aspect)
            return StateState(path, aspect, answer, builder, bag);
        if (path.Fact(builder.Vocabulary, bag) is not { } fact)
            return false;
        var key = new FactKey(path.Part, fact);
        if (ValueReader.IsUnknown(answer))
        {
            builder.Forget(key, _ => true);
            return true;
        }

        var isSure = fact.Type.IsQuantity && answer.Text.StartsWith(SureWord, StringComparison.Ordinal);
        var figure = isSure ? Piece(answer.Span.File!, answer.Span.Offset + SureWord.Length, answer.Span.File!.Text.Length) : answer;
        if (ValueReader.Read(key, figure, bag) is not { } value)
            return false;
        builder.Forget(key, observation => observation.Source == source);
        builder.Take(new Observation(key, value, source, null, figure.Span, isSure), figure.Text, bag);
        return true;
    }

    private static bool StateState(PartPath path, Aspect aspect, YamlScalar answer, SituationBuilder builder, DiagnosticBag bag)
    {
        var state = aspect.IndexOf(answer.Text);
        if (state < 0)
            bag.Add(Messages.NotAState(answer.Span, answer.Text, $"{path.Part}.{path.Name}", aspect.States));
        else
            builder.SetState(path.Part, aspect, state);
        return state >= 0;
    }

    private static Truth? Answer(YamlScalar answer, DiagnosticBag bag)
    {
        switch (answer.Text)
        {
            case "yes": return Truth.Yes;
            case "no": return Truth.No;
            case "unknown": return Truth.Unknown;
            default:
                bag.Add(Messages.StatementAnswer(answer.Span, answer.Text));
                return null;
        }
    }

    private static YamlScalar Piece(SourceFile file, int start, int end)
    {
        var piece = file.Text[start..end];
        var trimmed = piece.Trim();
        return new YamlScalar(file.Span(start + piece.Length - piece.TrimStart().Length, trimmed.Length), trimmed, YamlStyle.Plain);
    }
}
