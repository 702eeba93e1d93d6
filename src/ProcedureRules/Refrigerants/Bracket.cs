namespace ProcedureRules.Refrigerants;

/// <summary>Finds where a function is zero between two places where its signs differ.</summary>
/// <remarks>
/// False position with the Illinois correction (Dowell and Jarratt, BIT 11, 1971, from memory), and plain halving every fourth step: the zero never
/// leaves the bracket, and the bracket always shrinks.
/// </remarks>
internal static class Bracket
{
    private const int MostSteps = 200;

    /// <summary>A place where the function is within <paramref name="tolerance"/> of zero, or the nearer end where both ends have one sign.</summary>
    public static double Zero(Func<double, double> function, double a, double b, double tolerance)
    {
        var (fa, fb) = (function(a), function(b));
        if (fa > 0 == fb > 0 || fa == 0 || fb == 0) return Math.Abs(fa) <= Math.Abs(fb) ? a : b;
        var next = a;
        for (var i = 1; i <= MostSteps; i++)
        {
            next = i % 4 == 0 ? (a + b) / 2 : ((a * fb) - (b * fa)) / (fb - fa);
            var value = function(next);
            if (Math.Abs(value) <= tolerance) break;

            // An end that stays twice would hold the false position back; half its value pulls the next step over.
            if (value > 0 == fb > 0) fa /= 2;
            else (a, fa) = (b, fb);
            (b, fb) = (next, value);
        }
        return next;
    }
}
