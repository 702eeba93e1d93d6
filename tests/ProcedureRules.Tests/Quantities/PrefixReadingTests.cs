using FsCheck.Xunit;
using ProcedureRules.Quantities;
using Xunit;

namespace ProcedureRules.Tests.Quantities;

[Properties(Arbitrary = [typeof(Sample)], MaxTest = 500)]
public class PrefixReadingTests
{
    [Theory]
    [InlineData("2 in + 3 mm", "2 in")]
    [InlineData("2 in - 3 mm", "2 in")]
    [InlineData("2 in) / 2", "2 in")]
    [InlineData("2 in, 3 in", "2 in")]
    [InlineData("1,5", "1")]
    [InlineData("1 1/4 in and x", "1 1/4 in")]
    [InlineData("3 / 8 in", "3")]
    [InlineData("3/8 in", "3/8 in")]
    [InlineData("0.020..0.025 in < gap", "0.020..0.025 in")]
    [InlineData("2 in +/- 0.5 in or x", "2 in +/- 0.5 in")]
    [InlineData("about 15 thou", "about 15 thou")]
    [InlineData("dT 20 degF > x", "dT 20 degF")]
    [InlineData("2 lb 14 oz * 2", "2 lb 14 oz")]
    [InlineData("-5..10 psi", "-5..10 psi")]
    [InlineData("2 and x", "2")]
    [InlineData("2-3", "2")]
    [InlineData("2 is", "2")]
    [InlineData("5 m/s", "5 m/s")]
    [InlineData("5 m / 2 s", "5 m")]
    [InlineData("45 pis", "45")]
    public void TryReadPrefix_InAnExpression_TakesTheQuantityOnly(string text, string taken)
    {
        Assert.True(Quantity.TryReadPrefix(text, out var value, out var consumed, out var fault), fault?.ToString());
        Assert.Equal(taken, text[..consumed]);
        Assert.Equal(Quantity.Read(taken), value);
    }

    [Theory]
    [InlineData("45pis > x", QuantityFaultKind.UnknownUnit, "psi")]
    [InlineData("20 inHg > x", QuantityFaultKind.AmbiguousUnit, "inHg vac")]
    [InlineData("3..2 in", QuantityFaultKind.BackwardRange, null)]
    [InlineData("2 in.. and", QuantityFaultKind.NotANumber, null)]
    [InlineData("x", QuantityFaultKind.NotANumber, null)]
    public void TryReadPrefix_AMistake_SaysWhat(string text, QuantityFaultKind kind, string? suggestion)
    {
        Assert.False(Quantity.TryReadPrefix(text, out _, out var consumed, out var fault));
        Assert.Equal((kind, suggestion, 0), (fault.Kind, fault.Suggestion, consumed));
    }

    [Theory]
    [InlineData("2 in", true)]
    [InlineData(".5 in", true)]
    [InlineData("about 2 in", true)]
    [InlineData("dT -2 degF", true)]
    [InlineData("about dP 2 psi", true)]
    [InlineData("about_time", false)]
    [InlineData("about x", false)]
    [InlineData("dTx", false)]
    [InlineData("..5", false)]
    [InlineData("-2", false)]
    [InlineData("", false)]
    public void StartsAt_ATextThatMayBeAQuantity_IsTrue(string text, bool expected) =>
        Assert.Equal(expected, Quantity.StartsAt(text));

    [Property]
    public bool TryReadPrefix_OfAPrintedQuantityAndARest_StopsAtItsEnd(Quantity value, bool us)
    {
        var text = value.ToString(us ? UnitSystem.Us : UnitSystem.Si);
        return Quantity.TryReadPrefix(text + " + x", out var back, out var consumed, out _)
            && consumed == text.Length && back.As(value.Dimension) == value;
    }

    [Property(MaxTest = 2000)]
    public bool TryRead_OfAnyText_NeverThrowsAndPointsInside(string? text)
    {
        var given = text ?? "";
        return PointsInside(given) && PointsInside("1" + given) && PointsInside("1 in " + given);
    }

    [Property(MaxTest = 5000)]
    public bool TryRead_OfShuffledPieces_NeverThrowsAndPointsInside(byte[] choice)
    {
        string[] pieces =
        [
            "1", "2.5", "1/4", "/", "..", ".", "+/-", "\u00B1", "-", "\u2013", ",", " ", " ", " ", "in", "\"", "'", "psi", "lb", "oz",
            "inHg", "vac", "abs", "dT", "dP", "about", "inf", "%", "degF", "e9", "0", "h", "min", "to", "Hg", "\u00B0",
        ];
        return PointsInside(string.Concat(choice.Take(12).Select(b => pieces[b % pieces.Length])));
    }

    private static bool PointsInside(string text)
    {
        if (Quantity.TryReadPrefix(text, out _, out var consumed, out _) && consumed > text.Length) return false;
        if (Quantity.TryRead(text, out _, out var fault)) return true;
        return fault.Message.Length > 0 && fault.Offset >= 0 && fault.Length >= 0 && fault.Offset + fault.Length <= text.Length;
    }
}
