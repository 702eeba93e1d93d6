using static ProcedureRules.Quantities.Dimension;

namespace ProcedureRules.Quantities;

/// <summary>What an operator makes of two dimensions, so that an expression can be checked before any value exists.</summary>
/// <remarks>
/// <para>A result of <see langword="null"/> means that the operator has no meaning there; <see cref="WhyNot"/> says so in words.</para>
/// <para>
/// A force times a length is a torque, never an energy: in this trade it is always a lever and its pull. An energy comes from a
/// torque turned through an angle, or a power kept up for a time. A gauge pressure times a number, or divided by another gauge
/// pressure, is allowed because workshops compare gauge readings by ratio (the lowest cylinder against the highest); a temperature
/// allows neither, because its ratio would depend on the scale.
/// </para>
/// </remarks>
public static class DimensionRules
{
    private static readonly Dictionary<(Dimension, Dimension), Dimension> Products = [];
    private static readonly Dictionary<(Dimension, Dimension), Dimension> Quotients = [];

    static DimensionRules()
    {
        (Dimension A, Dimension B, Dimension Product)[] triples =
        [
            (Length, Length, Area),
            (Area, Length, Volume),
            (Force, Length, Torque),
            (PressureDifference, Area, Force),
            (Density, Volume, Mass),
            (MassRate, Duration, Mass),
            (VolumeRate, Duration, Volume),
            (Density, VolumeRate, MassRate),
            (Speed, Duration, Length),
            (Power, Duration, Energy),
            (Voltage, Current, Power),
            (Current, Resistance, Voltage),
            (Current, Duration, ElectricCharge),
            (Voltage, ElectricCharge, Energy),
            (Torque, Angle, Energy),
            (Torque, SpeedOfRotation, Power),
            (SpeedOfRotation, Duration, Angle),
        ];
        foreach (var (a, b, product) in triples)
        {
            Products[(a, b)] = Products[(b, a)] = product;
            Quotients[(product, a)] = b;
            Quotients[(product, b)] = a;
        }

        // A gauge pressure on a piston gives its net push; the way back is ambiguous and gives a pressure difference.
        Products[(GaugePressure, Area)] = Products[(Area, GaugePressure)] = Force;
    }

    /// <summary>The dimension of a sum, or null.</summary>
    public static Dimension? Add(Dimension a, Dimension b)
    {
        if (IsPoint(a)) return b == DifferenceOf(a) ? a : null;
        if (IsPoint(b)) return a == DifferenceOf(b) ? b : null;
        return Common(a, b);
    }

    /// <summary>The dimension of a difference, or null. A point less a point is a difference; a point less a difference is a point.</summary>
    public static Dimension? Subtract(Dimension a, Dimension b)
    {
        if (!IsPoint(a)) return Common(a, b) is { } same && !IsPoint(same) ? same : null;
        if (a == b) return DifferenceOf(a);
        return b == DifferenceOf(a) ? a : null;
    }

    /// <summary>The dimension of a product, or null.</summary>
    public static Dimension? Multiply(Dimension a, Dimension b)
    {
        if (a == Count && b == Count) return Count;
        if (IsNumeric(a)) return b == Temperature ? null : IsNumeric(b) ? Number : b;
        if (IsNumeric(b)) return a == Temperature ? null : a;
        return Products.TryGetValue((a, b), out var product) ? product : null;
    }

    /// <summary>The dimension of a quotient, or null.</summary>
    public static Dimension? Divide(Dimension a, Dimension b)
    {
        if (IsNumeric(a) && IsNumeric(b)) return Number;
        if (a == Temperature || b == Temperature) return null;
        if (a == b) return Number;
        if (IsNumeric(b)) return a;
        return Quotients.TryGetValue((a, b), out var quotient) ? quotient : null;
    }

    /// <summary>The dimension of a value with its sign turned, or null where a sign has no meaning.</summary>
    public static Dimension? Negate(Dimension a) => a is Temperature or AbsolutePressure ? null : a;

    /// <summary>The dimension that two values share, or null: what comparing, least, greatest and hull ask for.</summary>
    /// <remarks>A count and a number share the number.</remarks>
    public static Dimension? Common(Dimension a, Dimension b) =>
        a == b ? a : IsNumeric(a) && IsNumeric(b) ? Number : null;

    /// <summary>Whether two values can be compared.</summary>
    public static bool AreComparable(Dimension a, Dimension b) => Common(a, b) is not null;

    /// <summary>Whether a value of one dimension may stand where another is due: the same, or a plain number for a count.</summary>
    public static bool Accepts(Dimension due, Dimension given) => due == given || (IsNumeric(due) && IsNumeric(given));

    /// <summary>Says why an operator (<c>+ - * / compare</c>) has no meaning for two dimensions.</summary>
    /// <returns>A sentence without a full stop, such as "a pressure difference cannot be added to a length".</returns>
    public static string WhyNot(string operation, Dimension a, Dimension b)
    {
        var (left, right) = (Dimensions.Phrase(a), Dimensions.Phrase(b));
        var sentence = operation switch
        {
            "+" => $"{left} and {right} cannot be added",
            "-" => $"{right} cannot be taken from {left}",
            "*" => $"{left} and {right} cannot be multiplied",
            "/" => $"{left} cannot be divided by {right}",
            _ => $"{left} cannot be compared with {right}",
        };
        var hint = operation is "*" or "/"
            ? a == Temperature || b == Temperature ? "what it gives would depend on the scale" : null
            : Hint(a, b);
        return hint is null ? sentence : $"{sentence}: {hint}";
    }

    private static string? Hint(Dimension a, Dimension b) => (a, b) switch
    {
        (Temperature, Temperature) => "a rise or drop of temperature is written dT 20 degF",
        (GaugePressure, AbsolutePressure) or (AbsolutePressure, GaugePressure) =>
            "one counts from the air around, the other from empty space",
        (Temperature, TemperatureDifference) or (TemperatureDifference, Temperature) =>
            "one is a point on the scale, the other a rise or drop",
        (GaugePressure or AbsolutePressure, PressureDifference) or (PressureDifference, GaugePressure or AbsolutePressure) =>
            "one is a pressure, the other a rise or drop",
        (GaugePressure, GaugePressure) or (AbsolutePressure, AbsolutePressure) => "a rise or drop of pressure is written dP 5 psi",
        (Torque, Energy) or (Energy, Torque) => "a torque turns, an energy is spent",
        (Number, _) or (_, Number) => "the number has no unit",
        _ => null,
    };

    private static bool IsNumeric(Dimension a) => a is Number or Count;

    private static bool IsPoint(Dimension a) => a is Temperature or GaugePressure or AbsolutePressure;

    private static Dimension DifferenceOf(Dimension point) =>
        point == Temperature ? TemperatureDifference : PressureDifference;
}
