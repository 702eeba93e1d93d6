namespace ProcedureRules.Quantities;

/// <summary>What no quantity of a dimension can be below, whatever part of whatever vehicle it is read on.</summary>
internal static class PhysicalLimits
{
    // The highest air pressure on record at sea level, 1084.8 hPa (World Meteorological Organization, from memory), with a little more for a shop below the sea.
    private const double DeepestVacuum = -110_000;

    /// <summary>The least that a quantity of the dimension can be; null where there is no such end.</summary>
    public static Quantity? Least(Dimension dimension) => dimension switch
    {
        Dimension.GaugePressure => Quantity.Point(DeepestVacuum, dimension),
        Dimension.Count or Dimension.Area or Dimension.Volume or Dimension.Mass or Dimension.AbsolutePressure or Dimension.Temperature
            or Dimension.Duration or Dimension.Resistance or Dimension.Density => Quantity.Point(0, dimension),
        _ => null,
    };

    /// <summary>Whether some of a quantity can be.</summary>
    public static bool Allow(Quantity quantity) =>
        Least(quantity.Dimension) is not { } least || Quantity.LessThan(quantity, least) != Logic.Truth.Yes;
}
