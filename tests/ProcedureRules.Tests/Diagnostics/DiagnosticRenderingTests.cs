using System.Text.Json;
using ProcedureRules.Diagnostics;
using Xunit;

namespace ProcedureRules.Tests.Diagnostics;

public class DiagnosticRenderingTests
{
    private static readonly SourceFile File = new(
        "rules/bottom-end.yaml",
        """
        facts:
          drop: length
        rules:
          - rule: pan
            when: [ pan.drop < oil.pressure ]
        """.ReplaceLineEndings("\n"));

    private static readonly Diagnostic Mixed = At("<") with
    {
        Label = "left is a length, right is a pressure",
        Suggestion = "oil.level",
        Notes = [new(Find("drop: length"), "declared here"), new(SourceSpan.None, "gauge pressure is a kind of its own")],
    };

    [Fact]
    public void ToSnippet_LabelAndNotes_ShowsLineCaretAndPlaces()
    {
        Assert.Equal(
            """
            rules/bottom-end.yaml:5:22: error PR0301: a pressure cannot be compared with a length
            5 |     when: [ pan.drop < oil.pressure ]
              |                      ^ left is a length, right is a pressure
              = declared here: rules/bottom-end.yaml:2:3
              = note: gauge pressure is a kind of its own
            """.ReplaceLineEndings("\n"),
            Mixed.ToSnippet());
    }

    [Fact]
    public void ToSnippet_SpanOverSeveralLines_UnderlinesTheFirst()
    {
        Assert.Equal(
            """
            rules/bottom-end.yaml:2:3: warning PR0301: a pressure cannot be compared with a length
            2 |   drop: length
              |   ^^^^^^^^^^^^
            """.ReplaceLineEndings("\n"),
            (At("drop: length\nrules:") with { Severity = Severity.Warning }).ToSnippet());
    }

    [Fact]
    public void ToSnippet_Tabs_KeepsThemBelowThemselves()
    {
        var file = new SourceFile("a.yaml", "x:\tbad\there");

        Assert.Equal(
            "a.yaml:1:8: error PR0001: m\n1 | x:\tbad\there\n  |   \t   \t^^^^",
            new Diagnostic("PR0001", Severity.Error, file.Span(7, 4), "m").ToSnippet());
    }

    [Fact]
    public void ToSnippet_VeryLongLine_ShowsAWindow()
    {
        var file = new SourceFile("a.yaml", new string('x', 500) + "BAD" + new string('y', 500));

        Assert.Equal(
            $"a.yaml:1:501: error PR0001: m\n1 | ...{new string('x', 60)}BAD{new string('y', 97)}...\n  | {new string(' ', 63)}^^^",
            new Diagnostic("PR0001", Severity.Error, file.Span(500, 3), "m").ToSnippet());
    }

    [Fact]
    public void ToSnippet_ControlCharacterInSource_IsNotPassedOn()
    {
        var file = new SourceFile("a.yaml", "a: \u001B[31m");

        Assert.Equal(
            "a.yaml:1:4: error PR0004: m\n1 | a: \uFFFD[31m\n  |    ^",
            new Diagnostic("PR0004", Severity.Error, file.Span(3, 1), "m").ToSnippet());
    }

    [Fact]
    public void ToSnippet_NoFileOrEmptyFile_IsTheLineAlone()
    {
        var nowhere = new Diagnostic("PR0801", Severity.Note, SourceSpan.None, "two\nlines");
        var missing = new Diagnostic("PR0001", Severity.Error, new SourceFile("no.yaml", "").Span(0, 0), "m");

        Assert.Equal("note PR0801: two lines", nowhere.ToSnippet());
        Assert.Equal("no.yaml:1:1: error PR0001: m", missing.ToSnippet());
    }

    [Fact]
    public void ToJson_AllFields_SaysWhatTheTextSays()
    {
        Assert.Equal(
            """
            [
              {
                "code": "PR0301",
                "severity": "error",
                "file": "rules/bottom-end.yaml",
                "line": 5,
                "column": 22,
                "length": 1,
                "message": "a pressure cannot be compared with a length",
                "label": "left is a length, right is a pressure",
                "suggestion": "oil.level",
                "notes": [
                  {
                    "text": "declared here",
                    "file": "rules/bottom-end.yaml",
                    "line": 2,
                    "column": 3,
                    "length": 12
                  },
                  {
                    "text": "gauge pressure is a kind of its own"
                  }
                ]
              }
            ]
            """.ReplaceLineEndings("\n"),
            DiagnosticJson.ToJson([Mixed]));
    }

    [Fact]
    public void ToJson_LoneSurrogateInMessage_IsStillJson()
    {
        var json = DiagnosticJson.ToJson([new Diagnostic("PR0001", Severity.Error, SourceSpan.None, "\uD800 '<")]);

        using var document = JsonDocument.Parse(json);
        Assert.Equal("\uFFFD '<", document.RootElement[0].GetProperty("message").GetString());
    }

    private static Diagnostic At(string part) =>
        new("PR0301", Severity.Error, Find(part), "a pressure cannot be compared with a length");

    private static SourceSpan Find(string part) =>
        File.Span(File.Text.IndexOf(part, StringComparison.Ordinal), part.Length);
}
