using ProcedureRules.Quantities;

namespace ProcedureRules.Refrigerants;

/// <summary>A pure refrigerant whose boiling pressure is published as an equation.</summary>
/// <remarks>
/// Coefficients: the short equations that fluid property libraries publish beside the equation of state named in the basis. For R-1234yf one is
/// in circulation that lies up to 25 % off its own equation of state; the one here is the sound one of 2011.
/// </remarks>
public sealed class Refrigerant
{
    private readonly VapourCurve _curve;

    private Refrigerant(string name, string designation, string basis, VapourCurve curve) =>
        (Name, Designation, Basis, _curve) = (name, designation, basis, curve);

    /// <summary>All that are known.</summary>
    public static IReadOnlyList<Refrigerant> All { get; } =
    [
        new("r12", "R-12",
            "short equation to Marx, Pruss and Wagner, VDI Fortschritt-Berichte Reihe 19 Nr. 57 (1992), within 0.02 % of it from -40 to 200 degF",
            new VapourCurve(
                385.12, 4136100, 116.1, 385.12, fromZero: false,
                (-0.4180899251614923, 0.894), (-6.821426208906223, 1.009), (1.4450198472690974, 1.274),
                (-1.4837613030063526, 3.0), (-2.1731387101462754, 4.927), (-5.72739817030707, 19.696))),
        new("r134a", "R-134a",
            "short equation to Tillner-Roth and Baehr, J. Phys. Chem. Ref. Data 23 (1994) 657-729, within 0.01 % of it from -40 to 200 degF",
            new VapourCurve(
                374.21, 4059280, 169.85, 374.21, fromZero: false,
                (0.4331478287291047, 0.845), (-9.090302559074352, 0.99), (2.1476074125217703, 1.14),
                (-1.557687007603464, 2.651), (-3.5020328972698604, 4.507), (14.958442337201044, 17.235))),
        new("r1234yf", "R-1234yf",
            "short equation to Richter, McLinden and Lemmon, J. Chem. Eng. Data 56 (2011) 3254-3264, within 0.3 % of Lemmon and Akasaka, "
            + "Int. J. Thermophys. 43 (2022) 119, from -40 to 200 degF",
            new VapourCurve(
                367.85, 3382200, 220, 367.85, fromZero: false,
                (0.21867168915151047, 0.728), (-6.7020534970313275, 0.961), (-3.9344883544124443, 3.78),
                (39309.745547798695, 17.277), (18.183182049398066, 7.967), (-3883.103380695622, 14.02))),
    ];

    /// <summary>The word that packs use, such as <c>r134a</c>.</summary>
    public string Name { get; }

    /// <summary>Its designation by ISO 817, such as <c>R-134a</c>.</summary>
    public string Designation { get; }

    /// <summary>The published equation, and how near it is.</summary>
    public string Basis { get; }

    /// <summary>The temperatures between which it can be liquid and vapour at once, as far as the equation goes; the upper one is its critical temperature.</summary>
    public Quantity Temperatures => Quantity.Between(_curve.Lowest, _curve.Highest, Dimension.Temperature);

    /// <summary>The pressures that go with <see cref="Temperatures"/>.</summary>
    public Quantity Pressures => Quantity.Between(_curve.LowestPressure, _curve.HighestPressure, Dimension.AbsolutePressure);

    /// <summary>Finds one by its word or designation, in any case, with or without the hyphen.</summary>
    /// <returns>The refrigerant, or null if none is called so.</returns>
    public static Refrigerant? Find(string name) => All.FirstOrDefault(one => one.Name == Plain(name));

    /// <summary>The pressure at which it boils; anything at all unless every temperature lies within <see cref="Temperatures"/>.</summary>
    public Quantity SaturationPressure(Quantity temperature)
    {
        if (!Temperatures.Contains(temperature)) return Quantity.Anything(Dimension.AbsolutePressure);
        var (low, high) = _curve.Pressure(temperature.Low, temperature.High);
        return Quantity.Between(low, high, Dimension.AbsolutePressure);
    }

    /// <summary>The temperature at which it boils; anything at all unless every pressure lies within <see cref="Pressures"/>.</summary>
    public Quantity SaturationTemperature(Quantity pressure)
    {
        if (!Pressures.Contains(pressure)) return Quantity.Anything(Dimension.Temperature);
        var (low, high) = _curve.Temperature(pressure.Low, pressure.High);
        return Quantity.Between(low, high, Dimension.Temperature);
    }

    private static string Plain(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return name.Trim().Replace("-", "", StringComparison.Ordinal).Replace(" ", "", StringComparison.Ordinal).ToLowerInvariant();
    }
}
