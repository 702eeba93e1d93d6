using ProcedureRules.Diagnostics;
using Xunit;

namespace ProcedureRules.Tests.Diagnostics;

public class SourceFileTests
{
    [Theory]
    [InlineData(0, 1, 1)]
    [InlineData(2, 1, 3)]
    [InlineData(3, 2, 1)]
    [InlineData(4, 2, 2)]
    [InlineData(5, 3, 1)]
    [InlineData(7, 4, 1)]
    [InlineData(8, 4, 2)]
    [InlineData(99, 4, 2)]
    [InlineData(-1, 1, 1)]
    public void PositionOf_EveryKindOfLineBreak_CountsFromOne(int offset, int line, int column)
    {
        var file = new SourceFile("a.yaml", "a\r\nb\rc\nd");
        Assert.Equal(8, file.Text.Length);

        // Offsets: a0 CR1 LF2 b3 CR4 c5 LF6 d7, end 8.
        Assert.Equal((line, column), file.PositionOf(offset));
        Assert.Equal(line, file.LineOf(offset));
    }

    [Fact]
    public void LineText_EveryLine_LeavesOutTheBreak()
    {
        var file = new SourceFile("a.yaml", "a\r\n\nc\n");

        Assert.Equal(4, file.LineCount);
        Assert.Equal(["", "a", "", "c", "", ""], Enumerable.Range(0, 6).Select(file.LineText));
        Assert.Equal([0, 0, 3, 4, 6, 6], Enumerable.Range(0, 6).Select(file.OffsetOf));
    }

    [Fact]
    public void New_ByteOrderMarkAndBackslashes_DropsAndTurnsThem()
    {
        var file = new SourceFile(@"rules\a.yaml", "\uFEFFa: b");

        Assert.Equal("rules/a.yaml", file.ToString());
        Assert.Equal("a: b", file.Text);
    }

    [Fact]
    public void Span_To_CoversBothOrStaysInItsFile()
    {
        var file = new SourceFile("a.yaml", "one two three");
        var other = new SourceFile("b.yaml", "one two three");

        Assert.Equal(file.Span(4, 9), file.Span(8, 5).To(file.Span(4, 3)));
        Assert.Equal(file.Span(4, 3), file.Span(4, 3).To(other.Span(8, 5)));
        Assert.Equal(SourceSpan.None, SourceSpan.None.To(file.Span(4, 3)));
    }

    [Fact]
    public void Span_None_HasNoPlace()
    {
        Assert.Equal((0, 0, ""), (SourceSpan.None.Line, SourceSpan.None.Column, SourceSpan.None.ToString()));
    }
}
