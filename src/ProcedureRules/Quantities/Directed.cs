namespace ProcedureRules.Quantities;

/// <summary>Sums, products and quotients rounded down or up to the next double, and not at all where they are exact.</summary>
/// <remarks>
/// The rounding error of each operation is itself a double (found by the two-sum of Knuth and by fused multiply-add), and its
/// sign says which way the rounded result missed. Near the ends of the range, where that does not hold, the result moves outward.
/// </remarks>
internal static class Directed
{
    private const double NearOverflow = 1e300;
    private const double NearUnderflow = 1e-290;

    public static double AddDown(double a, double b)
    {
        var sum = a + b;
        if (double.IsInfinity(a) || double.IsInfinity(b)) return sum;
        if (sum == double.PositiveInfinity) return double.MaxValue;
        if (Math.Abs(sum) > NearOverflow) return Math.BitDecrement(sum);
        var virtualB = sum - a;
        var error = (a - (sum - virtualB)) + (b - virtualB);
        return error < 0 ? Math.BitDecrement(sum) : sum;
    }

    public static double AddUp(double a, double b) => -AddDown(-a, -b);

    public static double MultiplyDown(double a, double b)
    {
        if (a == 0 || b == 0) return 0; // a bound that is not there, taken none times, is nothing
        var product = a * b;
        if (double.IsInfinity(a) || double.IsInfinity(b)) return product;
        if (product == double.PositiveInfinity) return double.MaxValue;
        if (Math.Abs(product) < NearUnderflow) return product > 0 || (product == 0 && a > 0 == b > 0) ? Shrink(product) : Math.BitDecrement(product);
        return Math.FusedMultiplyAdd(a, b, -product) < 0 ? Math.BitDecrement(product) : product;
    }

    public static double MultiplyUp(double a, double b) => -MultiplyDown(-a, b);

    /// <summary>The quotient of two bounds; never of two infinite ones.</summary>
    public static double DivideDown(double a, double b)
    {
        if (a == 0 || double.IsInfinity(b)) return 0;
        if (b == 0) return a > 0 ? double.PositiveInfinity : double.NegativeInfinity;
        var quotient = a / b;
        if (double.IsInfinity(a)) return quotient;
        if (quotient == double.PositiveInfinity) return double.MaxValue;
        if (Math.Abs(quotient) is < NearUnderflow or > NearOverflow || Math.Abs(a) < NearUnderflow) return Outward(quotient, a > 0 == b > 0);
        var rest = Math.FusedMultiplyAdd(-quotient, b, a);
        return rest != 0 && rest < 0 == b > 0 ? Math.BitDecrement(quotient) : quotient;
    }

    public static double DivideUp(double a, double b) => -DivideDown(-a, b);

    private static double Outward(double value, bool positive) => positive ? Shrink(value) : Math.BitDecrement(value);

    private static double Shrink(double value) => value > 0 ? Math.BitDecrement(value) : 0;
}
