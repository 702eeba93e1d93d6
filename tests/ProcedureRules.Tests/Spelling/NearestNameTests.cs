using ProcedureRules.Spelling;
using Xunit;

namespace ProcedureRules.Tests.Spelling;

public class NearestNameTests
{
    [Theory]
    [InlineData("therm", "then")]
    [InlineData("wehn", "when")]
    [InlineData("becuase", "because")]
    [InlineData("oil-pan", "oil_pan")]
    [InlineData("Oil Pan", "oil_pan")]
    [InlineData("OILPAN", "oil_pan")]
    [InlineData("then", "when")]
    [InlineData("x", null)]
    [InlineData("completely_different", null)]
    [InlineData("", null)]
    public void Find_Misspelling_NamesTheNearest(string wrong, string? expected)
    {
        var known = new[] { "when", "then", "because", "oil_pan", "id" };

        Assert.Equal(expected, NearestName.Find(wrong, known.Where(name => name != wrong)));
    }

    [Fact]
    public void Find_Tie_GoesToTheFirstInOrdinalOrderWhateverTheInput()
    {
        Assert.Equal("mount_a", NearestName.Find("mount_x", ["mount_b", "mount_a", "mount_c"]));
        Assert.Equal("mount_a", NearestName.Find("mount_x", ["mount_c", "mount_a", "mount_b"]));
    }

    [Fact]
    public void Find_OfAWholeTitle_AllowsMoreMistakes() =>
        Assert.Equal(
            "Both mounts are renewed, and one holds while the other is changed: on stands",
            NearestName.Find("Both mounts are renwed and one holds, while other is changed: on stands", ["Both mounts are renewed, and one holds while the other is changed: on stands", "Both mounts are renewed"]));

    [Theory]
    [InlineData("belt", "drive_belt")]
    [InlineData("cooling_system", "cooling")]
    [InlineData("pump_shaft_seal", "shaft_seal")]
    [InlineData("oil_cooler", null)]
    [InlineData("today", null)]
    public void Find_AWordTooManyOrTooFew_NamesTheOneWithTheRest(string wrong, string? expected) =>
        Assert.Equal(expected, NearestName.Find(wrong, ["timing_belt", "drive_belt", "belt_cover", "cooling", "shaft_seal", "oil_pan", "not_today"]));

    [Fact]
    public void Find_NameItself_IsNoSuggestion() => Assert.Null(NearestName.Find("when", ["when"]));

    [Fact]
    public void Find_EndlessName_IsNotCompared() => Assert.Null(NearestName.Find(new string('a', 100_000), [new string('a', 64)]));
}
