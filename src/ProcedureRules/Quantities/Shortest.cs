using System.Globalization;
using System.Numerics;

namespace ProcedureRules.Quantities;

/// <summary>The fewest decimal digits of a figure in a unit from which reading gives the same double back.</summary>
internal static class Shortest
{
    private const int MostDigits = 25;
    private const int LongestPlain = 12;

    /// <summary>Writes the figure; fails when no reasonable number of digits is enough.</summary>
    public static bool TryWrite(double bound, Unit? unit, out string figure)
    {
        figure = "0";
        var exact = unit is null ? ExactNumber.From(bound) : unit.FromBase(ExactNumber.From(bound));
        if (exact.Sign == 0) return true;
        var power = PowerOfTen(exact);
        for (var count = 1; count <= MostDigits; count++)
        {
            var exponent = power - count + 1;
            var digits = Round(exact / ExactNumber.Scaled(1, exponent));
            var candidate = ExactNumber.Scaled(digits, exponent);
            if ((unit is null ? candidate : unit.ToBase(candidate)).ToDouble() != bound) continue;
            figure = Write(digits, exponent);
            return true;
        }

        return false;
    }

    /// <summary>The power of ten of the first digit of a number other than zero.</summary>
    public static int PowerOfTen(ExactNumber value)
    {
        var magnitude = value.Abs();
        var guess = (int)Math.Floor(BigInteger.Log10(magnitude.Numerator) - BigInteger.Log10(magnitude.Denominator));
        while (magnitude < ExactNumber.Scaled(1, guess)) guess--;
        while (!(magnitude < ExactNumber.Scaled(1, guess + 1))) guess++;
        return guess;
    }

    /// <summary>The whole number at or below a value.</summary>
    public static BigInteger Floor(ExactNumber value)
    {
        var quotient = BigInteger.DivRem(value.Numerator, value.Denominator, out var rest);
        return rest.Sign < 0 ? quotient - 1 : quotient;
    }

    /// <summary>The nearest whole number, halves upward.</summary>
    public static BigInteger Round(ExactNumber value) => Floor(value + ((ExactNumber)1 / 2));

    /// <summary>Writes <c>digits * 10^exponent</c> without needless zeros; with an exponent only where plain digits would run long.</summary>
    public static string Write(BigInteger digits, int exponent)
    {
        if (digits.IsZero) return "0";
        while ((digits % 10).IsZero)
        {
            digits /= 10;
            exponent++;
        }

        var sign = digits.Sign < 0 ? "-" : "";
        var text = BigInteger.Abs(digits).ToString(CultureInfo.InvariantCulture);
        var point = text.Length + exponent;
        if (point is > LongestPlain + 6 or < -LongestPlain)
            return $"{sign}{text[0]}{(text.Length > 1 ? "." + text[1..] : "")}e{(point - 1).ToString(CultureInfo.InvariantCulture)}";
        if (exponent >= 0) return sign + text + new string('0', exponent);
        return point > 0 ? $"{sign}{text[..point]}.{text[point..]}" : $"{sign}0.{new string('0', -point)}{text}";
    }
}
