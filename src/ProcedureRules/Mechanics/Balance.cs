using ProcedureRules.Quantities;
using static ProcedureRules.Quantities.Quantity;

namespace ProcedureRules.Mechanics;

/// <summary>Moments of a vehicle on two supports. Places count backwards from one point, such as the front axle.</summary>
/// <remarks>What cannot be (no wheelbase, a rear support in front of the front one, more taken off than there is) gives "anything".</remarks>
internal static class Balance
{
    private const double RightAngle = Math.PI / 2;

    public static Quantity CentreFromAxleLoads(Quantity front, Quantity rear, Quantity wheelbase) =>
        front.Low >= 0 && rear.Low >= 0 && front.Low + rear.Low > 0 && wheelbase.Low > 0 && AreBounded(front, rear, wheelbase)
            ? Corners.Of(at => at[2] * (at[1] / (at[0] + at[1])), front, rear, wheelbase)
            : Anything(Dimension.Length);

    public static Quantity CentreHeight(Quantity level, Quantity tilted, Quantity mass, Quantity wheelbase, Quantity raised, Quantity wheelRadius)
    {
        var isPossible = AreBounded(level, tilted, mass, wheelbase, raised, wheelRadius)
            && mass.Low > 0 && raised.Low > 0 && raised.High < wheelbase.Low;
        return isPossible ? Corners.Of(Height, level, tilted, mass, wheelbase, raised, wheelRadius) : Anything(Dimension.Length);

        // The cotangent of the tilt, whose sine is the rise over the wheelbase.
        static Quantity Height(Quantity[] at)
        {
            var sine = at[4] / at[3];
            return at[5] + (at[3] * ((at[0] - at[1]) / at[2]) * (Rounded.Root(Number(1) - (sine * sine)) / sine));
        }
    }

    public static Quantity CentreWithout(Quantity mass, Quantity centre, Quantity taken, Quantity takenAt) =>
        taken.Low >= 0 && taken.High < mass.Low && AreBounded(mass, centre, taken, takenAt)
            ? Corners.Of(at => at[1] + ((at[1] - at[3]) * (at[2] / (at[0] - at[2]))), mass, centre, taken, takenAt)
            : Anything(Dimension.Length);

    public static Quantity FrontLoad(Quantity mass, Quantity centre, Quantity taken, Quantity takenAt, Quantity frontAt, Quantity rearAt) =>
        ArePossible(mass, taken, frontAt, rearAt) && AreBounded(mass, centre, taken, takenAt, frontAt, rearAt)
            ? Corners.Of(at => (at[0] * ((at[5] - at[1]) / (at[5] - at[4]))) - (at[2] * ((at[5] - at[3]) / (at[5] - at[4]))), mass, centre, taken, takenAt, frontAt, rearAt)
            : Anything(Dimension.Mass);

    /// <summary>As the front load, seen from behind.</summary>
    public static Quantity RearLoad(Quantity mass, Quantity centre, Quantity taken, Quantity takenAt, Quantity frontAt, Quantity rearAt) =>
        FrontLoad(mass, -centre, taken, -takenAt, -rearAt, -frontAt);

    public static Quantity Reserve(Quantity centre, Quantity frontAt, Quantity rearAt)
    {
        if (frontAt.High >= rearAt.Low || !AreBounded(centre, frontAt, rearAt)) return Anything(Dimension.Length);
        var least = Min(centre - frontAt, rearAt - centre).Low;

        // At best the centre lies midway between supports as far apart as they may be, or as near to midway as it can.
        var half = (Point(rearAt.High, Dimension.Length) - Point(frontAt.Low, Dimension.Length)) / Number(2);
        var greatest = Min(half, Min(centre - frontAt, rearAt - centre));
        return Between(least, greatest.High, Dimension.Length);
    }

    public static Quantity PushToUnloadFront(Quantity mass, Quantity centre, Quantity pushAt, Quantity rearAt) =>
        mass.Low >= 0 && pushAt.High < rearAt.Low && AreBounded(mass, centre, pushAt, rearAt)
            ? Corners.Of(at => at[0] * ((at[3] - at[1]) / (at[3] - at[2])), mass, centre, pushAt, rearAt)
            : Anything(Dimension.Mass);

    public static Quantity SlingLegLoad(Quantity load, Quantity legs, Quantity angle) =>
        load.Low >= 0 && legs.Low >= 1 && angle.Low > 0 && angle.High <= RightAngle && AreBounded(load, legs, angle)
            ? load / (legs.As(Dimension.Number) * Rounded.Sine(angle))
            : Anything(Dimension.Mass);

    private static bool ArePossible(Quantity mass, Quantity taken, Quantity frontAt, Quantity rearAt) =>
        taken.Low >= 0 && taken.High <= mass.Low && frontAt.High < rearAt.Low;

    private static bool AreBounded(params ReadOnlySpan<Quantity> values)
    {
        foreach (var value in values)
            if (!value.IsBounded) return false;
        return true;
    }
}
