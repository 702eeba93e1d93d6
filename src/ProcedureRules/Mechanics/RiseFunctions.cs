using ProcedureRules.Language;
using ProcedureRules.Quantities;
using static ProcedureRules.Mechanics.Rounded;

namespace ProcedureRules.Mechanics;

/// <summary>What moves, and what it fouls, while an engine is raised.</summary>
internal static class RiseFunctions
{
    private const string Basis = "plane motion of a rigid body: an arc is the radius times the angle in radians";

    private static readonly FunctionParameter Side = new("gap_lies", GapSide.All);
    private static readonly FunctionParameter Out = new("out", Dimension.Length);
    private static readonly FunctionParameter Up = new("up", Dimension.Length);
    private static readonly FunctionParameter Arm = new("arm", Dimension.Length);

    public static IReadOnlyList<FunctionDefinition> All { get; } =
    [
        new()
        {
            Name = "turn_of_rise",
            Parameters = [new("rise", Dimension.Length), Arm],
            Returns = Dimension.Angle,
            Documentation = "the angle an engine turns about the mount left tight when the lifting point, one arm away from it and level with it, rises so far; upright at most",
            Basis = Basis,
            Implementation = given => TurnOfRise(given["rise"], given["arm"]),
        },
        new()
        {
            Name = "moves_into_gap",
            Parameters = [Side, Out, Up, new("turn", Dimension.Angle), new("lift", Dimension.Length)],
            Returns = Dimension.Length,
            Documentation = "how far a point of the engine comes into the gap beside it on the way, when the engine turns about the mount left tight, is lifted straight, or both; "
                + "out from that mount towards the lifting point and up from it say where the point is; slack is used up whichever way the point goes",
            Basis = Basis,
            Implementation = given => MovesIntoGap(given.Word("gap_lies"), given["out"], given["up"], given["turn"], given["lift"]),
        },
        new()
        {
            Name = "safe_rise",
            Parameters = [Side, new("gap", Dimension.Length), Out, Up, Arm],
            Returns = Dimension.Length,
            Documentation = "how far the lifting point of an engine that turns about the mount left tight can rise before a point has used up its gap; the whole arm where it never does",
            Basis = Basis,
            Implementation = given => SafeRise(given.Word("gap_lies"), given["gap"], given["out"], given["up"], given["arm"]),
        },
    ];

    private static Quantity TurnOfRise(Quantity rise, Quantity arm) =>
        rise.Low >= 0 && arm.Low > 0 ? ArcSine(rise / arm) : Quantity.Anything(Dimension.Angle);

    private static Quantity MovesIntoGap(string side, Quantity x, Quantity z, Quantity turn, Quantity lift)
    {
        var isInRange = AreShopSized(x, z, lift) && lift.Low >= 0 && turn.Low >= 0 && turn.High <= Math.PI / 2;
        return isInRange
            ? RigidMotion.IntoGap(side, Bare(x), Bare(z), Bare(turn), Bare(lift)).As(Dimension.Length, least: 0)
            : Quantity.Anything(Dimension.Length);
    }

    private static Quantity SafeRise(string side, Quantity gap, Quantity x, Quantity z, Quantity arm)
    {
        var isInRange = AreShopSized(gap, x, z, arm) && gap.Low >= 0 && arm.Low > 0;
        return isInRange
            ? RigidMotion.SafeRise(side, Bare(gap), Bare(x), Bare(z), Bare(arm)).As(Dimension.Length, least: 0)
            : Quantity.Anything(Dimension.Length);
    }

    // Figures whose squares no longer fit are no places on an engine.
    private static bool AreShopSized(params ReadOnlySpan<Quantity> lengths)
    {
        const double far = 1e6;
        foreach (var length in lengths)
            if (!(length.Low >= -far && length.High <= far)) return false;
        return true;
    }
}
