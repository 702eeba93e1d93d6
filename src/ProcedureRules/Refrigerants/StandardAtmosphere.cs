using ProcedureRules.Quantities;

namespace ProcedureRules.Refrigerants;

/// <summary>The pressure of the air at an altitude, by the standard atmosphere.</summary>
public static class StandardAtmosphere
{
    private const double SeaLevelPressure = 101325;
    private const double SeaLevelTemperature = 288.15;
    private const double Lapse = 0.0065;
    private const double Gravity = 9.80665;
    private const double GasConstant = 287.05287;
    private const double Power = Gravity / (GasConstant * Lapse);
    private const double Rounding = 1e-13;

    /// <summary>The published source.</summary>
    public const string Basis = "standard atmosphere, ICAO Doc 7488 and ISO 2533:1975; weather moves the air pressure by some 3 % either way (common practice)";

    /// <summary>The altitudes it is reckoned for: from 500 m below the sea to the top of the lowest layer.</summary>
    public static Quantity Altitudes { get; } = Quantity.Between(-500, 11_000, Dimension.Length);

    /// <summary>The air pressure at sea level, one standard atmosphere.</summary>
    public static Quantity SeaLevel { get; } = Quantity.Point(SeaLevelPressure, Dimension.AbsolutePressure);

    /// <summary>The air pressure at an altitude; anything at all unless every altitude lies within <see cref="Altitudes"/>.</summary>
    public static Quantity AirPressure(Quantity altitude) => Altitudes.Contains(altitude)
        ? Quantity.Between(At(altitude.High) * (1 - Rounding), At(altitude.Low) * (1 + Rounding), Dimension.AbsolutePressure)
        : Quantity.Anything(Dimension.AbsolutePressure);

    private static double At(double metres) => SeaLevelPressure * Math.Pow(1 - (Lapse * metres / SeaLevelTemperature), Power);
}
