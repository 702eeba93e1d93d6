using System.Text.RegularExpressions;
using ProcedureRules.Diagnostics;
using ProcedureRules.Packs;
using ProcedureRules.Yaml;

namespace ProcedureRules.Testing.Scenarios;

/// <summary>The parameters that one row gives; they stand in braces in the scenario's texts.</summary>
internal sealed partial class Parameters
{
    private readonly Dictionary<string, YamlScalar> _given = new(StringComparer.Ordinal);
    private readonly HashSet<string> _used = new(StringComparer.Ordinal);
    private readonly string _row;
    private readonly DiagnosticBag _bag;

    public Parameters(YamlMapping? row, DiagnosticBag bag)
    {
        (_row, _bag) = (row?.Text("row") ?? "", bag);
        foreach (var entry in row?.Map("with")?.Entries ?? [])
            if (entry.Value is YamlScalar value && Forms.NamePattern.Matches(entry.Name)) _given[entry.Name] = value;
        Keys = [.. row?.Map("with")?.Entries.Select(entry => entry.Key) ?? []];
    }

    private IReadOnlyList<YamlScalar> Keys { get; }

    /// <summary>A copy of a node with the values of the row in it.</summary>
    public YamlNode Fill(YamlNode node) => node switch
    {
        YamlScalar scalar => Fill(scalar),
        YamlSequence list => new YamlSequence(list.Span, [.. list.Items.Select(Fill)]),
        YamlMapping map => Fill(map, []),
        _ => node,
    };

    /// <summary>A copy of a mapping, without some of its keys.</summary>
    public YamlMapping Fill(YamlMapping map, IReadOnlyCollection<string> without) =>
        new(map.Span, [.. map.Entries.Where(entry => !without.Contains(entry.Name)).Select(entry => new YamlEntry(entry.Key, Fill(entry.Value)))]);

    /// <summary>Complains about what nothing used.</summary>
    public void ComplainAboutUnused()
    {
        foreach (var key in Keys.Where(key => !_used.Contains(key.Text))) _bag.Add(Messages.UnusedParameter(key.Span, key.Text));
    }

    private YamlScalar Fill(YamlScalar scalar)
    {
        if (!scalar.Text.Contains('{', StringComparison.Ordinal) && !scalar.Text.Contains('}', StringComparison.Ordinal)) return scalar;
        // A parameter that is the whole text is read where its value stands, so that mistakes in the value are told there.
        if (Form().Match(scalar.Text) is { Success: true } whole && whole.Length == scalar.Text.Length && whole.Groups[1].Success) return ValueOf(scalar, whole) ?? scalar;
        var text = Form().Replace(scalar.Text, match => match.Groups[1].Success ? ValueOf(scalar, match)?.Text ?? match.Value : match.Value[..1]);
        return new YamlScalar(scalar.Span, text, scalar.Style);
    }

    private YamlScalar? ValueOf(YamlScalar scalar, Match match)
    {
        var name = match.Groups[1].Value;
        _used.Add(name);
        if (_given.TryGetValue(name, out var value)) return value;
        _bag.Add(Messages.NoSuchParameter(scalar.SpanAt(match.Index, match.Length), name, _row, _given.Keys));
        return null;
    }

    [GeneratedRegex(@"\{\{|\}\}|\{([a-z][a-z0-9_]*)\}", RegexOptions.CultureInvariant)]
    private static partial Regex Form();
}
