using System.Text.Json;
using ProcedureRules.Diagnostics;
using Xunit;

namespace ProcedureRules.Tests.Diagnostics;

public class DiagnosticBagTests
{
    private static readonly SourceFile First = new("a.yaml", "one\ntwo\n");
    private static readonly SourceFile Second = new("b.yaml", "one\ntwo\n");

    [Fact]
    public void ToLines_AddedInAnyOrder_SortsByFilePlaceAndCodeAndTellsEachOnce()
    {
        var bag = new DiagnosticBag();
        bag.AddRange(
        [
            New("PR0002", Second.Span(0, 1)),
            New("PR0002", First.Span(4, 1)),
            New("PR0001", First.Span(4, 1)),
            New("PR0003", First.Span(0, 1)),
            New("PR0001", First.Span(4, 3)),
            New("PR0009", SourceSpan.None),
        ]);

        Assert.Equal(5, bag.Count);
        Assert.Equal(
            """
            warning PR0009: m
            a.yaml:1:1: warning PR0003: m
            a.yaml:2:1: warning PR0001: m
            a.yaml:2:1: warning PR0002: m
            b.yaml:1:1: warning PR0002: m

            """.ReplaceLineEndings("\n"),
            bag.ToLines());
    }

    [Fact]
    public void HasErrors_OnlyWarnings_IsFalseUntilAnError()
    {
        var bag = new DiagnosticBag();
        bag.Add(New("PR0001", SourceSpan.None));
        Assert.False(bag.HasErrors);

        bag.Add(New("PR0002", SourceSpan.None) with { Severity = Severity.Error });
        Assert.True(bag.HasErrors);
    }

    [Fact]
    public void ToLines_MoreThanShown_SaysHowManyMore()
    {
        var file = new SourceFile("a.yaml", new string('\n', 300));
        var bag = new DiagnosticBag();
        for (var i = 0; i < 237; i++)
            bag.Add(New("PR0001", file.Span(i, 1)));

        var lines = bag.ToLines().Split('\n');
        Assert.Equal(202, lines.Length);
        Assert.Equal("a.yaml:200:1: warning PR0001: m", lines[199]);
        Assert.Equal(["and 37 more", ""], lines[200..]);
        Assert.Equal(237, JsonDocument.Parse(bag.ToJson()).RootElement.GetArrayLength());
    }

    private static Diagnostic New(string code, SourceSpan span) => new(code, Severity.Warning, span, "m");
}
