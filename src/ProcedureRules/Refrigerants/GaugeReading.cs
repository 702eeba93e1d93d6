using ProcedureRules.Quantities;

namespace ProcedureRules.Refrigerants;

/// <summary>Gauge pressures and absolute ones in the air around.</summary>
internal static class GaugeReading
{
    /// <summary>A pressure above the air around, as a pressure above empty space.</summary>
    public static Quantity ToAbsolute(Quantity gauge, Quantity air) => air + Quantity.Between(gauge.Low, gauge.High, Dimension.PressureDifference);

    /// <summary>A pressure above empty space, as a pressure above the air around.</summary>
    public static Quantity FromAbsolute(Quantity absolute, Quantity air)
    {
        var above = absolute - air;
        return Quantity.Between(above.Low, above.High, Dimension.GaugePressure);
    }
}
