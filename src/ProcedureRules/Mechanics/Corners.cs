using ProcedureRules.Quantities;

namespace ProcedureRules.Mechanics;

/// <summary>The range of a formula over intervals, from the corners of the box that they span.</summary>
/// <remarks>
/// Exact for a formula that, with all other arguments held still, only rises or only falls in each of them, whichever way: its least and
/// greatest values then lie at corners. Each corner is reckoned with outward rounding, so that the result holds them all.
/// </remarks>
internal static class Corners
{
    public static Quantity Of(Func<Quantity[], Quantity> formula, params Quantity[] arguments)
    {
        var point = new Quantity[arguments.Length];
        Quantity? result = null;
        for (var corner = 0; corner < 1 << arguments.Length; corner++)
        {
            for (var i = 0; i < arguments.Length; i++)
            {
                var argument = arguments[i];
                point[i] = Quantity.Point((corner >> i & 1) == 0 ? argument.Low : argument.High, argument.Dimension);
            }

            var value = formula(point);
            result = result is { } known ? Quantity.Hull(known, value) : value;
        }

        return result!.Value;
    }
}
