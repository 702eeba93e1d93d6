namespace ProcedureRules.Quantities;

/// <summary>The names of the dimensions, as packs write them and as messages say them.</summary>
public static class Dimensions
{
    // Indexed by Dimension. The grain is the step, in the SI base unit, below which two bounds are the same figure: far
    // finer than any gauge, coarser than what rounding leaves behind when sums of workshop figures cancel.
    private static readonly (string Name, string Phrase, double Grain)[] Rows =
    [
        ("number", "a number", 1e-12),
        ("count", "a count", 1e-12),
        ("length", "a length", 1e-12),
        ("area", "an area", 1e-14),
        ("volume", "a volume", 1e-15),
        ("mass", "a mass", 1e-12),
        ("force", "a force", 1e-9),
        ("torque", "a torque", 1e-10),
        ("energy", "an energy", 1e-7),
        ("power", "a power", 1e-9),
        ("gauge_pressure", "a gauge pressure", 1e-6),
        ("absolute_pressure", "an absolute pressure", 1e-6),
        ("pressure_difference", "a pressure difference", 1e-6),
        ("temperature", "a temperature", 1e-9),
        ("temperature_difference", "a temperature difference", 1e-9),
        ("duration", "a duration", 1e-9),
        ("voltage", "a voltage", 1e-12),
        ("current", "a current", 1e-12),
        ("resistance", "a resistance", 1e-9),
        ("electric_charge", "an electric charge", 1e-9),
        ("angle", "an angle", 1e-12),
        ("speed_of_rotation", "a speed of rotation", 1e-10),
        ("speed", "a speed", 1e-12),
        ("mass_rate", "a mass rate", 1e-15),
        ("volume_rate", "a volume rate", 1e-18),
        ("density", "a density", 1e-9),
    ];

    private static readonly Dictionary<string, Dimension> ByName =
        Enum.GetValues<Dimension>().ToDictionary(d => Rows[(int)d].Name, StringComparer.Ordinal);

    /// <summary>Every dimension, in the order of the enumeration.</summary>
    public static IReadOnlyList<Dimension> All { get; } = Enum.GetValues<Dimension>();

    /// <summary>The name a pack uses, such as <c>gauge_pressure</c>.</summary>
    public static string Name(Dimension dimension) => Rows[(int)dimension].Name;

    /// <summary>The name with its article, for sentences: <c>a gauge pressure</c>.</summary>
    public static string Phrase(Dimension dimension) => Rows[(int)dimension].Phrase;

    /// <summary>Finds a dimension by the name a pack uses.</summary>
    /// <returns>Whether there is one of that name.</returns>
    public static bool TryParse(string name, out Dimension dimension)
    {
        ArgumentNullException.ThrowIfNull(name);
        return ByName.TryGetValue(name, out dimension);
    }

    internal static double Grain(Dimension dimension) => Rows[(int)dimension].Grain;
}
