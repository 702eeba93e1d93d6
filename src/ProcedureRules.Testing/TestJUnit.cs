using System.Globalization;
using System.Text;
using System.Xml;
using ProcedureRules.Diagnostics;

namespace ProcedureRules.Testing;

/// <summary>Results as JUnit XML, which build servers read: a test suite for each file, a test case for each case.</summary>
public static class TestJUnit
{
    /// <summary>Writes the document.</summary>
    public static string Write(IReadOnlyList<CaseResult> results)
    {
        ArgumentNullException.ThrowIfNull(results);
        var text = new StringBuilder();
        // Characters that XML cannot hold are dropped before they are written, so nothing needs checking.
        using (var writer = XmlWriter.Create(text, new XmlWriterSettings { Indent = true, NewLineChars = "\n", OmitXmlDeclaration = true, CheckCharacters = false }))
        {
            writer.WriteStartElement("testsuites");
            Sums(writer, results);
            foreach (var suite in results.GroupBy(result => result.Case.Span.File?.Path ?? "")) Suite(writer, suite.Key, [.. suite]);
            writer.WriteEndElement();
        }

        return text.ToString();
    }

    private static void Suite(XmlWriter writer, string file, IReadOnlyList<CaseResult> results)
    {
        writer.WriteStartElement("testsuite");
        Attribute(writer, "name", file);
        Sums(writer, results);
        foreach (var result in results) Case(writer, file, result);
        writer.WriteEndElement();
    }

    private static void Sums(XmlWriter writer, IReadOnlyList<CaseResult> results)
    {
        Attribute(writer, "tests", results.Count.ToString(CultureInfo.InvariantCulture));
        Attribute(writer, "failures", results.Count(result => result.Failures.Any()).ToString(CultureInfo.InvariantCulture));
        Attribute(writer, "errors", results.Count(result => !result.Passed && !result.Failures.Any()).ToString(CultureInfo.InvariantCulture));
        Attribute(writer, "time", Seconds(results.Aggregate(TimeSpan.Zero, (sum, result) => sum + result.Time)));
    }

    private static void Case(XmlWriter writer, string file, CaseResult result)
    {
        writer.WriteStartElement("testcase");
        Attribute(writer, "classname", result.Case.Scenario);
        Attribute(writer, "name", result.Case.Row ?? result.Case.Scenario);
        Attribute(writer, "file", file);
        Attribute(writer, "line", result.Case.Span.Line.ToString(CultureInfo.InvariantCulture));
        Attribute(writer, "time", Seconds(result.Time));
        foreach (var failure in result.Failures)
            Fault(writer, "failure", $"expected {failure.Expected}; came {failure.Came}", [$"{failure.Span}", .. failure.Because]);
        foreach (var mistake in result.Diagnostics.Where(mistake => mistake.Severity == Severity.Error))
            Fault(writer, "error", mistake.ToLine(), [.. mistake.Notes.Select(note => note.Text)]);
        writer.WriteEndElement();
    }

    private static void Fault(XmlWriter writer, string element, string message, IReadOnlyList<string> lines)
    {
        writer.WriteStartElement(element);
        Attribute(writer, "message", message);
        writer.WriteString(Clean(string.Join('\n', lines)));
        writer.WriteEndElement();
    }

    private static void Attribute(XmlWriter writer, string name, string value) => writer.WriteAttributeString(name, Clean(value));

    private static string Clean(string text) => string.Concat(text.Where(c => XmlConvert.IsXmlChar(c)));

    private static string Seconds(TimeSpan time) => time.TotalSeconds.ToString("0.000", CultureInfo.InvariantCulture);
}
