using System.Globalization;
using System.Numerics;

namespace ProcedureRules.Quantities;

/// <summary>
/// A ratio of whole numbers. Text is read through it so that one value in two spellings (20 thou, 0.020 in, 0.508 mm) is
/// one double: rounding happens once, at the end.
/// </summary>
internal readonly struct ExactNumber
{
    private const int MantissaBits = 53;
    private const int LeastNormalExponent = -1022;
    private const int GuardBits = 66;

    private readonly BigInteger _numerator;
    private readonly BigInteger _denominatorLessOne; // so that default is 0/1

    public ExactNumber(BigInteger numerator, BigInteger denominator)
    {
        if (denominator.Sign < 0) (numerator, denominator) = (-numerator, -denominator);
        var divisor = BigInteger.GreatestCommonDivisor(numerator, denominator);
        _numerator = numerator / divisor;
        _denominatorLessOne = (denominator / divisor) - 1;
    }

    public static ExactNumber Zero => default;

    public int Sign => _numerator.Sign;

    public BigInteger Numerator => _numerator;

    public BigInteger Denominator => _denominatorLessOne + 1;

    public bool IsWhole => Denominator.IsOne;

    public static implicit operator ExactNumber(int value) => new(value, 1);

    public static ExactNumber operator +(ExactNumber a, ExactNumber b) =>
        new((a.Numerator * b.Denominator) + (b.Numerator * a.Denominator), a.Denominator * b.Denominator);

    public static ExactNumber operator -(ExactNumber a, ExactNumber b) => a + -b;

    public static ExactNumber operator -(ExactNumber a) => new(-a.Numerator, a.Denominator);

    public static ExactNumber operator *(ExactNumber a, ExactNumber b) =>
        new(a.Numerator * b.Numerator, a.Denominator * b.Denominator);

    public static ExactNumber operator /(ExactNumber a, ExactNumber b) =>
        new(a.Numerator * b.Denominator, a.Denominator * b.Numerator);

    public static bool operator <(ExactNumber a, ExactNumber b) => (a - b).Sign < 0;

    public static bool operator >(ExactNumber a, ExactNumber b) => (a - b).Sign > 0;

    /// <summary>A whole number of tenths, hundredths and so on: <c>digits * 10^exponent</c>.</summary>
    public static ExactNumber Scaled(BigInteger digits, int exponent) => exponent >= 0
        ? new(digits * BigInteger.Pow(10, exponent), 1)
        : new(digits, BigInteger.Pow(10, -exponent));

    /// <summary>Reads plain decimal text, for the unit table.</summary>
    public static ExactNumber Parse(string text)
    {
        var point = text.IndexOf('.', StringComparison.Ordinal);
        var digits = BigInteger.Parse(text.Replace(".", "", StringComparison.Ordinal), CultureInfo.InvariantCulture);
        return Scaled(digits, point < 0 ? 0 : point + 1 - text.Length);
    }

    /// <summary>The exact value of a finite double.</summary>
    public static ExactNumber From(double value)
    {
        var bits = BitConverter.DoubleToInt64Bits(value);
        var exponent = (int)((bits >> 52) & 0x7FF);
        var mantissa = bits & 0xFFFFFFFFFFFFF;
        if (exponent == 0) exponent = 1;
        else mantissa |= 1L << 52;
        var signed = new BigInteger(bits < 0 ? -mantissa : mantissa);
        exponent -= 1075;
        return exponent >= 0 ? new(signed << exponent, 1) : new(signed, BigInteger.One << -exponent);
    }

    public ExactNumber Abs() => Sign < 0 ? -this : this;

    /// <summary>The nearest double, ties to even; infinite when beyond the greatest.</summary>
    public double ToDouble()
    {
        if (Sign == 0) return 0;
        var magnitude = BigInteger.Abs(_numerator);
        var shift = (int)(Denominator.GetBitLength() - magnitude.GetBitLength()) + GuardBits;
        var quotient = BigInteger.DivRem(
            shift > 0 ? magnitude << shift : magnitude,
            shift < 0 ? Denominator << -shift : Denominator,
            out var rest);
        if (!rest.IsZero) quotient |= BigInteger.One;

        var length = (int)quotient.GetBitLength();
        var exponent = length - 1 - shift;
        var kept = exponent >= LeastNormalExponent ? MantissaBits : MantissaBits - (LeastNormalExponent - exponent);
        if (kept < 0) return 0;
        var dropped = length - kept;
        var mantissa = quotient >> dropped;
        var tail = quotient - (mantissa << dropped);
        var half = BigInteger.One << (dropped - 1);
        if (tail > half || (tail == half && !mantissa.IsEven)) mantissa += 1;
        var value = Math.ScaleB((double)mantissa, dropped - shift);
        return Sign < 0 ? -value : value;
    }
}
