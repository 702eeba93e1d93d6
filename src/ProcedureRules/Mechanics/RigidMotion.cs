using ProcedureRules.Quantities;
using static ProcedureRules.Mechanics.Rounded;

namespace ProcedureRules.Mechanics;

/// <summary>
/// The engine as a rigid body in the plane in which it turns: the pivot is the mount left tight, <c>out</c> the level distance of a point
/// from it towards the lifting point, <c>up</c> its height over it.
/// </summary>
/// <remarks>
/// A point at (x, z) that turns by t rises by x sin t - z (1 - cos t) and goes out by -z sin t - x (1 - cos t). What counts is the greatest
/// movement on the whole way up, not that at its end: a point that swings past an obstacle has hit it. Hence more rise never frees a gap.
/// </remarks>
internal static class RigidMotion
{
    private static readonly Quantity Zero = Quantity.Number(0);
    private static readonly Quantity One = Quantity.Number(1);
    private static readonly Quantity Two = Quantity.Number(2);
    private static readonly Quantity Half = Quantity.Number(0.5);
    private static readonly Quantity RootOfTwo = Root(Two);

    /// <summary>How far a point comes into its gap while the engine turns by up to one angle and is lifted by up to one length, in any order.</summary>
    public static Quantity IntoGap(string side, Quantity x, Quantity z, Quantity turn, Quantity lift) => side switch
    {
        GapSide.Above => Climb(x, z, turn) + lift,
        GapSide.Below => Climb(-x, -z, turn),
        GapSide.Away => Climb(-z, x, turn),
        GapSide.Toward => Climb(z, -x, turn),
        _ => Travel(x, z, turn, lift),
    };

    /// <summary>The greatest rise, at a lifting point level with the pivot and one arm away, before a turning point has used up its gap; at most upright.</summary>
    public static Quantity SafeRise(string side, Quantity gap, Quantity x, Quantity z, Quantity arm) => arm * (side switch
    {
        GapSide.Above => SineToUseUp(gap, x, z),
        GapSide.Below => SineToUseUp(gap, -x, -z),
        GapSide.Away => SineToUseUp(gap, -z, x),
        GapSide.Toward => SineToUseUp(gap, z, -x),
        _ => SineToTravel(gap, Radius(x, z)),
    });

    // The greatest a sin t - b (1 - cos t) on the way to the turn: rises with a and the turn, falls with b.
    private static Quantity Climb(Quantity a, Quantity b, Quantity turn) =>
        Quantity.Between(ClimbAt(Low(a), High(b), Low(turn)).Low, ClimbAt(High(a), Low(b), High(turn)).High, Dimension.Number);

    private static Quantity ClimbAt(Quantity a, Quantity b, Quantity turn)
    {
        var sine = Sine(turn);
        var half = Sine(Half * turn);
        var isPastItsPeak = a.Low > 0 && b.Low > 0 && a.Low * Math.Cos(turn.Low) < b.Low * Math.Sin(turn.Low);
        return isPastItsPeak ? a * a / (Root((a * a) + (b * b)) + b) : Quantity.Max(Zero, (a * sine) - (Two * b * half * half));
    }

    /// <summary>The greatest distance from where the point was, whichever way.</summary>
    /// <remarks>
    /// It is convex in the place of the point, so its greatest value lies at a corner. Its least is bounded from below by the sides taken
    /// one by one, and by the middle: places that differ by so much move no more than the root of two times as much apart in a quarter turn.
    /// </remarks>
    private static Quantity Travel(Quantity x, Quantity z, Quantity turn, Quantity lift)
    {
        var high = Corners.Of(at => TravelAt(at[0], at[1], High(turn), High(lift)), x, z).High;
        var (slow, level) = (Low(turn), Low(lift));
        var middle = TravelAt(Quantity.Number(x.Midpoint!.Value), Quantity.Number(z.Midpoint!.Value), slow, level);
        var apart = Quantity.Number((x.High - x.Low) / 2) + Quantity.Number((z.High - z.Low) / 2);
        var low = Math.Max((middle - (RootOfTwo * apart)).Low, (Two * Radius(x, z) * Sine(Half * slow)).Low);
        foreach (var side in GapSide.All)
            if (side != GapSide.Any) low = Math.Max(low, IntoGap(side, x, z, slow, level).Low);
        return Quantity.Between(low, Math.Max(low, high), Dimension.Number);
    }

    // For one turn the distance grows with the lift or falls and grows again, so only no lift and all of it count.
    private static Quantity TravelAt(Quantity x, Quantity z, Quantity turn, Quantity lift)
    {
        var square = (x * x) + (z * z);
        var turned = Climb(Zero, -(Two * square), turn);
        var lifted = (lift * lift) + Climb(Two * lift * x, (Two * lift * z) - (Two * square), turn);
        return Root(Quantity.Max(turned, lifted));
    }

    // Rises with the gap and b, falls with a.
    private static Quantity SineToUseUp(Quantity gap, Quantity a, Quantity b) =>
        Quantity.Between(SineAt(Low(gap), High(a), Low(b)).Low, SineAt(High(gap), Low(a), High(b)).High, Dimension.Number);

    // With u the tangent of half the angle, a sin t - b (1 - cos t) = gap is (gap + 2b) u^2 - 2a u + gap = 0; its least positive root.
    private static Quantity SineAt(Quantity gap, Quantity a, Quantity b)
    {
        var square = gap + (Two * b);
        var under = (a * a) - (gap * square);
        if (under.High < 0 || (a.Low <= 0 && square.High >= 0)) return One;
        var root = Root(under);
        if (a.Low > 0 && gap.High == 0) return Zero;
        var half = a.Low > 0 ? gap / (a + root) : (root - a) / -square;
        return half.Low >= 1 ? One : Quantity.Min(One, Two * half / (One + (half * half)));
    }

    private static Quantity SineToTravel(Quantity gap, Quantity radius) =>
        Quantity.Between(SineToTravelAt(Low(gap), High(radius)).Low, SineToTravelAt(High(gap), Low(radius)).High, Dimension.Number);

    private static Quantity SineToTravelAt(Quantity gap, Quantity radius)
    {
        var square = gap * gap;
        var full = Two * radius * radius;
        if (square.Low >= full.Low) return One;
        var half = gap / (Two * radius);
        return Quantity.Min(One, Two * half * Root(One - (half * half)));
    }

    private static Quantity Radius(Quantity x, Quantity z) => Root(Square(x) + Square(z));

    private static Quantity Square(Quantity value)
    {
        var size = Quantity.Abs(value);
        return size * size;
    }

    private static Quantity Low(Quantity value) => Quantity.Number(value.Low);

    private static Quantity High(Quantity value) => Quantity.Number(value.High);
}
