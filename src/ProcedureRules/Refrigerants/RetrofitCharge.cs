using ProcedureRules.Quantities;

namespace ProcedureRules.Refrigerants;

/// <summary>How much R-134a stands in for a charge of R-12, by mass.</summary>
internal static class RetrofitCharge
{
    /// <summary>What the figures rest on.</summary>
    public const string Basis =
        "common practice: 80 to 90 % of the R-12 charge by mass; a second rule of the trade, nine tenths less a quarter of a pound, gives the low end of it "
        + "at 2 1/2 lb. No standard gives a figure for every vehicle: the vehicle maker's retrofit figure comes first";

    private static readonly Quantity Least = Quantity.Number(0.8);
    private static readonly Quantity Most = Quantity.Number(0.9);

    /// <summary>From the least to the most that is usual.</summary>
    public static Quantity Band(Quantity charge) => charge.Low >= 0 ? Quantity.Hull(charge * Least, charge * Most) : Quantity.Anything(Dimension.Mass);

    /// <summary>What to start with: the least, since some can be added and an overcharge has to be recovered.</summary>
    public static Quantity Start(Quantity charge) => charge.Low >= 0 ? charge * Least : Quantity.Anything(Dimension.Mass);
}
