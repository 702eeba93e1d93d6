using System.Text.RegularExpressions;
using ProcedureRules.Diagnostics;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Yaml;

namespace ProcedureRules.Facts;

/// <summary>Reads statements on relations: <c>covers(a, b)</c>, <c>not covers(a, b)</c>, <c>unknown covers(a, b)</c>.</summary>
internal static partial class RelationStatementReader
{
    /// <summary>The relation, its parts and the answer, or null after a complaint.</summary>
    public static RelationStatement? Read(YamlScalar text, SituationBuilder builder, bool isArchetype, Source source, DiagnosticBag bag)
    {
        var match = Form().Match(text.Text);
        if (!match.Success)
        {
            bag.Add(Messages.RelationForm(text.Span, text.Text));
            return null;
        }

        var name = match.Groups["name"];
        if (!builder.Vocabulary.Relations.TryGetValue(name.Value, out var relation))
        {
            bag.Add(Messages.UnknownRelation(text.SpanAt(name.Index, name.Length), name.Value, builder.Vocabulary.Relations.Keys));
            return null;
        }

        var a = PartOf(match.Groups["a"], relation.First);
        var b = PartOf(match.Groups["b"], relation.Second);
        if (a is null || b is null)
            return null;
        if (ReferenceEquals(a, b))
        {
            bag.Add(Messages.RelationToItself(text.Span, a.Name, relation.Name));
            return null;
        }

        var holds = match.Groups["answer"].Value switch { "not" => Truth.No, "unknown" => Truth.Unknown, _ => Truth.Yes };
        return new RelationStatement(relation, a, b, holds, source, text.Span);

        Part? PartOf(Group written, Kind due)
        {
            var span = text.SpanAt(written.Index, written.Length);
            var part = PartNames.Find(written.Value, span, builder, isArchetype, bag);
            if (part is null || part.Kind.IsA(due))
                return part;
            bag.Add(Messages.RelationKind(span, part.Name, part.Kind.Name, relation.Name, due.Name, relation.Span));
            return null;
        }
    }

    [GeneratedRegex(@"\A\s*(?:(?<answer>not|unknown)\s+)?(?<name>[a-z][a-z0-9_]*)\s*\(\s*(?<a>[a-z][a-z0-9_]*)\s*,\s*(?<b>[a-z][a-z0-9_]*)\s*\)\s*\z", RegexOptions.CultureInvariant)]
    private static partial Regex Form();
}
