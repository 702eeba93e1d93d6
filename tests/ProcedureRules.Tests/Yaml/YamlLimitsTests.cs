using System.Diagnostics;
using ProcedureRules.Yaml;
using Xunit;

namespace ProcedureRules.Tests.Yaml;

public class YamlLimitsTests
{
    [Theory]
    [InlineData("[", "1:65")]
    [InlineData("{a: ", "1:257")]
    [InlineData("- ", "1:129")]
    [InlineData("? ", "1:129")]
    public void Read_EndlessNesting_StopsAtTheBoundAndSoon(string piece, string place)
    {
        var text = string.Concat(Enumerable.Repeat(piece, 1_000_000));
        var clock = Stopwatch.StartNew();

        Assert.Equal($"test.yaml:{place}: error PR0003: this is nested too deep: at most 64 levels\n", Read.Text(text).Bag.ToLines());
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(10), $"took {clock.Elapsed}");
    }

    [Fact]
    public void Read_DepthAtTheBound_IsFine()
    {
        var text = new string('[', YamlLimits.Depth) + new string(']', YamlLimits.Depth);

        Assert.Equal(YamlLimits.Depth, Read.Clean<YamlSequence>(text).Span.Length / 2);
    }

    [Fact]
    public void Read_TooManyValues_StopsWhereTheyAreReached()
    {
        var text = string.Concat(Enumerable.Repeat("- a\n", YamlLimits.Nodes));

        Assert.Equal(
            "test.yaml:200000:3: error PR0003: the file holds too much: at most 200000 values, reached here\n",
            Read.Text(text).Bag.ToLines());
    }

    [Fact]
    public void Read_TooLong_IsRefusedUnread()
    {
        var (node, bag) = Read.Text(new string('a', YamlLimits.Characters + 1));

        Assert.Null(node);
        Assert.Equal("test.yaml:1:1: error PR0003: the file is too long: at most 4194304 characters\n", bag.ToLines());
    }
}
