using ProcedureRules.Mechanics;
using Xunit;

namespace ProcedureRules.Tests.Mechanics;

/// <summary>Threads as they are called for in the shop.</summary>
public class BoltThreadTests
{
    [Theory]
    [InlineData("3/8-16", 0.375, 0.0625)]
    [InlineData("1/4-28", 0.25, 0.0357142857)]
    [InlineData(" 1 1/8-7 ", 1.125, 0.1428571429)]
    [InlineData("1-1/8-7", 1.125, 0.1428571429)]
    [InlineData("1-8", 1, 0.125)]
    [InlineData("5/16-18 UNC", 0.3125, 0.0555555556)]
    public void TryRead_OfAnInchThread_HasDiameterAndPitchInInches(string text, double diameter, double pitch)
    {
        var thread = BoltThread.TryRead(text, out _)!;
        Assert.False(thread.IsMetric);
        Assert.Equal(diameter, thread.Diameter.In("in"), 9);
        Assert.Equal(pitch, thread.Pitch.In("in"), 9);
    }

    // Source of the coarse pitches: ISO 261, from memory.
    [Theory]
    [InlineData("M8x1.25", 8, 1.25)]
    [InlineData("m10 x 1", 10, 1)]
    [InlineData("M8", 8, 1.25)]
    [InlineData("M14", 14, 2)]
    public void TryRead_OfAMetricThread_HasDiameterAndPitchInMillimetres(string text, double diameter, double pitch)
    {
        var thread = BoltThread.TryRead(text, out _)!;
        Assert.True(thread.IsMetric);
        Assert.Equal(diameter, thread.Diameter.In("mm"), 9);
        Assert.Equal(pitch, thread.Pitch.In("mm"), 9);
    }

    [Theory]
    [InlineData("3/8", "the threads per inch are due")]
    [InlineData("M11", "the pitch is due")]
    [InlineData("", "is no thread")]
    [InlineData("three eighths", "is no thread")]
    [InlineData("3/0-16", "such a thread cannot be")]
    [InlineData("3/8-0", "such a thread cannot be")]
    [InlineData("1/4-3", "such a thread cannot be")]
    [InlineData("M8x9", "such a thread cannot be")]
    [InlineData("M0x1", "such a thread cannot be")]
    public void TryRead_OfWhatIsNoThread_SaysWhy(string text, string why)
    {
        Assert.Null(BoltThread.TryRead(text, out var mistake));
        Assert.Contains(why, mistake, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("5", "M8", "grade 5 is for inch bolts, M8 is a metric thread")]
    [InlineData("8.8", "3/8-16", "class 8.8 is for metric bolts, 3/8-16 is an inch thread")]
    [InlineData("8", "3-16", "SAE J429 gives grade 8 from 0.25 in to 1.5 in, not 3-16")]
    public void Chart_OfAGradeThatDoesNotGoWithTheThread_SaysWhy(string grade, string size, string why)
    {
        Assert.Null(TorqueChart.Of(BoltGrades.Find(grade)!, BoltThread.TryRead(size, out _)!, out var mistake));
        Assert.Equal(why, mistake);
    }
}
