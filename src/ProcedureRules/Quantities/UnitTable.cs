using ProcedureRules.Spelling;
using static ProcedureRules.Quantities.UnitFactors;
using static ProcedureRules.Quantities.UnitSystem;

namespace ProcedureRules.Quantities;

/// <summary>Every unit that is read or printed.</summary>
/// <remarks>
/// The spellings follow the trade. <c>psi</c>, <c>kPa</c> and <c>bar</c> are gauge pressures, because that is what a gauge in a
/// workshop shows; an absolute pressure says so (<c>psia</c>, <c>kPa abs</c>, <c>bar abs</c>). <c>micron</c> is a depth of vacuum
/// (a thousandth of a torr, absolute), so a millionth of a metre is <c>um</c>. <c>inHg</c> alone is ambiguous and is refused:
/// <c>inHg vac</c> counts down from the air around, <c>inHg abs</c> up from empty space.
/// </remarks>
public static class UnitTable
{
    /// <summary>The word before a temperature difference: <c>dT 20 degF</c>.</summary>
    public const string TemperatureDifferencePrefix = "dT";

    /// <summary>The word before a pressure difference: <c>dP 5 psi</c>.</summary>
    public const string PressureDifferencePrefix = "dP";

    /// <summary>Every unit, by dimension.</summary>
    public static IReadOnlyList<Unit> All { get; } =
    [
        U("%", Dimension.Number, (ExactNumber)1 / 100, "per cent", null),

        U("thou|mil|mils", Dimension.Length, Inch * Milli, "thousandth of an inch", Us, us: 0),
        U("in|inch|inches|\"|\u2033", Dimension.Length, Inch, "inch", Us, us: 0.00254, group: "foot"),
        U("ft|foot|feet|'|\u2032", Dimension.Length, Foot, "foot", Us, us: 3.6576, group: "foot"),
        U("um|\u00B5m|\u03BCm", Dimension.Length, Micro, "micrometre; a micron is a depth of vacuum here", Si),
        U("mm", Dimension.Length, Milli, "millimetre", Si, si: 0),
        U("cm", Dimension.Length, (ExactNumber)1 / 100, "centimetre", Si),
        U("m|metre|metres|meter|meters", Dimension.Length, One, "metre", Si, si: 2),
        U("km", Dimension.Length, Kilo, "kilometre", Si, si: 1000),
        U("mi|mile|miles", Dimension.Length, Mile, "mile", Us, us: 1609.344),

        U("in2|sq in|in\u00B2", Dimension.Area, Inch * Inch, "square inch", Us, us: 0),
        U("ft2|sq ft|ft\u00B2", Dimension.Area, Foot * Foot, "square foot", Us, us: 0.371612),
        U("mm2|sq mm|mm\u00B2", Dimension.Area, Micro, "square millimetre", Si, si: 0),
        U("cm2|sq cm|cm\u00B2", Dimension.Area, (ExactNumber)1 / 10_000, "square centimetre", Si, si: 0.001),
        U("m2|sq m|m\u00B2", Dimension.Area, One, "square metre", Si, si: 0.5),

        U("fl oz|floz", Dimension.Volume, Gallon / 128, "US fluid ounce", Us, us: 0, group: "gallon"),
        U("pt|pint|pints", Dimension.Volume, Gallon / 8, "US liquid pint", Us, group: "gallon"),
        U("qt|quart|quarts", Dimension.Volume, Gallon / 4, "US liquid quart", Us, us: 0.000946352946, group: "gallon"),
        U("gal|gallon|gallons", Dimension.Volume, Gallon, "US gallon", Us, us: 0.01892705892, group: "gallon"),
        U("in3|cu in|in\u00B3", Dimension.Volume, Inch * Inch * Inch, "cubic inch", Us),
        U("mL|ml|cc|cm3|cm\u00B3", Dimension.Volume, Micro, "millilitre", Si, si: 0),
        U("L|l|litre|litres|liter|liters", Dimension.Volume, Litre, "litre", Si, si: 0.001),

        U("oz|ounce|ounces", Dimension.Mass, Ounce, "ounce", Us, us: 0, group: "pound"),
        U("lb|lbs|pound|pounds", Dimension.Mass, Pound, "pound; a pull is in lbf", Us, us: 0.45359237, group: "pound"),
        U("mg", Dimension.Mass, Micro, "milligram", Si),
        U("g|gram|grams", Dimension.Mass, Milli, "gram", Si, si: 0, group: "kilogram"),
        U("kg", Dimension.Mass, One, "kilogram", Si, si: 1, group: "kilogram"),

        U("lbf", Dimension.Force, PoundForce, "pound of force", Us, us: 0),
        U("N", Dimension.Force, One, "newton", Si, si: 0),
        U("kN", Dimension.Force, Kilo, "kilonewton", Si, si: 10_000),
        U("kgf", Dimension.Force, StandardGravity, "kilogram of force", Si),

        U("lb.in|lb-in|lb in|lbf.in|lbf-in|lbf in|in.lb|in-lb|in lb|in.lbf|in-lbf|in lbf|in-lbs|in lbs|in.lbs|lbin|inlb|inlbs",
            Dimension.Torque, PoundForce * Inch, "pound inch", Us, us: 0),
        U("lb.ft|lb-ft|lb ft|lbf.ft|lbf-ft|lbf ft|ft.lb|ft-lb|ft lb|ft.lbf|ft-lbf|ft lbf|ft-lbs|ft lbs|ft.lbs|lbft|ftlb|ftlbs",
            Dimension.Torque, PoundForce * Foot, "pound foot", Us, us: 13.5),
        U("N.m|Nm|N-m|N m|N\u00B7m|N\u22C5m", Dimension.Torque, One, "newton metre", Si, si: 0),
        U("kgf.m|kgf m", Dimension.Torque, StandardGravity, "kilogram-force metre", Si),

        U("J", Dimension.Energy, One, "joule", null, us: 0, si: 0),
        U("kJ", Dimension.Energy, Kilo, "kilojoule", null, us: 1000, si: 1000),
        U("Wh", Dimension.Energy, Hour, "watt hour", null),
        U("kWh", Dimension.Energy, Hour * Kilo, "kilowatt hour", null),

        U("W", Dimension.Power, One, "watt", null, us: 0, si: 0),
        U("kW", Dimension.Power, Kilo, "kilowatt", null, us: 1000, si: 1000),
        U("hp", Dimension.Power, Horsepower, "horsepower, 550 ft.lbf a second", Us),

        U("inHg vac|in.Hg vac|in Hg vac", Dimension.GaugePressure, -InchOfMercury,
            "inch of mercury below the air around", Us, us: 0),
        U("psi|psig", Dimension.GaugePressure, Psi, "pound a square inch, gauge", Us, us: 0),
        U("kPa", Dimension.GaugePressure, Kilo, "kilopascal, gauge", Si, si: 0),
        U("bar", Dimension.GaugePressure, Kilo * 100, "bar, gauge", Si),
        U("mbar", Dimension.GaugePressure, 100, "millibar, gauge", Si),
        U("inH2O", Dimension.GaugePressure, InchOfWater, "inch of water, gauge", Us),

        U("micron|microns", Dimension.AbsolutePressure, Torr * Milli, "micron of mercury, absolute", null, us: 0, si: 0),
        U("torr|mmHg abs", Dimension.AbsolutePressure, Torr, "torr, absolute", null),
        U("inHg abs|in.Hg abs|in Hg abs", Dimension.AbsolutePressure, InchOfMercury, "inch of mercury, absolute", Us),
        U("psia|psi abs", Dimension.AbsolutePressure, Psi, "pound a square inch, absolute", Us, us: 34000),
        U("Pa abs", Dimension.AbsolutePressure, One, "pascal, absolute", Si),
        U("kPa abs|kPaa", Dimension.AbsolutePressure, Kilo, "kilopascal, absolute", Si, si: 34000),
        U("bar abs|bara", Dimension.AbsolutePressure, Kilo * 100, "bar, absolute", Si),
        U("mbar abs", Dimension.AbsolutePressure, 100, "millibar, absolute", Si),
        U("atm", Dimension.AbsolutePressure, 101325, "standard atmosphere, absolute", null),

        U("psi|psid", Dimension.PressureDifference, Psi, "pound a square inch, rise or drop", Us, us: 340),
        U("inHg|in.Hg|in Hg", Dimension.PressureDifference, InchOfMercury, "inch of mercury, rise or drop", Us),
        U("inH2O", Dimension.PressureDifference, InchOfWater, "inch of water, rise or drop", Us),
        U("Pa", Dimension.PressureDifference, One, "pascal, rise or drop", Si),
        U("mbar", Dimension.PressureDifference, 100, "millibar, rise or drop", Si),
        U("kPa", Dimension.PressureDifference, Kilo, "kilopascal, rise or drop", Si, si: 340),
        U("bar", Dimension.PressureDifference, Kilo * 100, "bar, rise or drop", Si),
        U("torr", Dimension.PressureDifference, Torr, "torr, rise or drop", null),
        U("micron|microns", Dimension.PressureDifference, Torr * Milli, "micron of mercury, rise or drop", null, us: 0, si: 0),

        U("degF|\u00B0F|deg F", Dimension.Temperature, FahrenheitDegree, "degree Fahrenheit", Us, FahrenheitZero, us: 0),
        U("degC|\u00B0C|deg C", Dimension.Temperature, One, "degree Celsius", Si, CelsiusZero, si: 0),
        U("K", Dimension.Temperature, One, "kelvin", Si),

        U("degF|\u00B0F|deg F", Dimension.TemperatureDifference, FahrenheitDegree, "degree Fahrenheit, rise or drop", Us, us: 0),
        U("degC|\u00B0C|deg C", Dimension.TemperatureDifference, One, "degree Celsius, rise or drop", Si, si: 0),
        U("K", Dimension.TemperatureDifference, One, "kelvin, rise or drop", Si),

        U("ms", Dimension.Duration, Milli, "millisecond", null, us: 0, si: 0),
        U("s|sec|secs|second|seconds", Dimension.Duration, One, "second", null, us: 0.5, si: 0.5, group: "hour"),
        U("min|mins|minute|minutes", Dimension.Duration, Minute, "minute", null, us: 120, si: 120, group: "hour"),
        U("h|hr|hrs|hour|hours", Dimension.Duration, Hour, "hour", null, us: 7200, si: 7200, group: "hour"),
        U("d|day|days", Dimension.Duration, Day, "day of 24 hours", null, us: 259_200, si: 259_200, group: "hour"),

        U("mV", Dimension.Voltage, Milli, "millivolt", null, us: 0, si: 0),
        U("V|volt|volts", Dimension.Voltage, One, "volt", null, us: 0.5, si: 0.5),
        U("kV", Dimension.Voltage, Kilo, "kilovolt", null, us: 1000, si: 1000),
        U("mA", Dimension.Current, Milli, "milliampere", null, us: 0, si: 0),
        U("A|amp|amps", Dimension.Current, One, "ampere", null, us: 1, si: 1),
        U("mohm|m\u03A9", Dimension.Resistance, Milli, "milliohm", null),
        U("ohm|ohms|\u03A9", Dimension.Resistance, One, "ohm", null, us: 0, si: 0),
        U("kohm|k\u03A9", Dimension.Resistance, Kilo, "kiloohm", null, us: 1000, si: 1000),
        U("Ah|A.h", Dimension.ElectricCharge, Hour, "ampere hour", null, us: 0, si: 0),

        U("deg|\u00B0|degree|degrees", Dimension.Angle, Degree, "degree of arc", null, us: 0, si: 0),
        U("rad", Dimension.Angle, One, "radian", null),
        U("rpm|r/min", Dimension.SpeedOfRotation, Pi / 30, "revolution a minute", null, us: 0, si: 0),
        U("rad/s", Dimension.SpeedOfRotation, One, "radian a second", null),
        U("mph", Dimension.Speed, Mile / Hour, "mile an hour", Us, us: 0),
        U("km/h", Dimension.Speed, Kilo / Hour, "kilometre an hour", Si, si: 0),
        U("m/s", Dimension.Speed, One, "metre a second", Si),
        U("ft/s", Dimension.Speed, Foot, "foot a second", Us),

        U("lb/min", Dimension.MassRate, Pound / Minute, "pound a minute", Us, us: 0),
        U("oz/min", Dimension.MassRate, Ounce / Minute, "ounce a minute", Us),
        U("g/s", Dimension.MassRate, Milli, "gram a second", Si, si: 0),
        U("g/min", Dimension.MassRate, Milli / Minute, "gram a minute", Si),
        U("kg/s", Dimension.MassRate, One, "kilogram a second", Si),
        U("kg/h", Dimension.MassRate, One / Hour, "kilogram an hour", Si),
        U("gal/min|gpm", Dimension.VolumeRate, Gallon / Minute, "US gallon a minute", Us, us: 0),
        U("L/min|l/min", Dimension.VolumeRate, Litre / Minute, "litre a minute", Si, si: 0),
        U("mL/min|cc/min|ml/min", Dimension.VolumeRate, Micro / Minute, "millilitre a minute", Si),
        U("m3/s|m\u00B3/s", Dimension.VolumeRate, One, "cubic metre a second", Si),
        U("lb/ft3|lb/ft\u00B3", Dimension.Density, Pound / (Foot * Foot * Foot), "pound a cubic foot", Us, us: 0),
        U("lb/gal", Dimension.Density, Pound / Gallon, "pound a US gallon", Us),
        U("kg/m3|kg/m\u00B3", Dimension.Density, One, "kilogram a cubic metre", Si, si: 0),
        U("kg/L|kg/l|g/mL|g/ml|g/cm3", Dimension.Density, Kilo, "kilogram a litre", Si),
    ];

    /// <summary>Finds a unit by one of its spellings, with or without its prefix (<c>psi</c>, <c>dP psi</c>).</summary>
    /// <returns>The unit, or null if there is none of that name.</returns>
    public static Unit? Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var prefix = name.StartsWith("dT ", StringComparison.Ordinal) || name.StartsWith("dP ", StringComparison.Ordinal) ? name[..2] : null;
        var rest = prefix is null ? name : name[3..];
        return UnitMatcher.TryMatch(rest, prefix, out var unit, out var length) && length == rest.Length ? unit : null;
    }

    /// <summary>The units of a dimension, in the order of the table.</summary>
    public static IEnumerable<Unit> For(Dimension dimension) => All.Where(u => u.Dimension == dimension);

    /// <summary>The spelling nearest to a word that is no unit, for "did you mean".</summary>
    /// <returns>A spelling, or null if nothing is near.</returns>
    public static string? Nearest(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        var names = All.SelectMany(unit => unit.Names).ToList();
        if (names.Contains(word, StringComparer.Ordinal)) return null;

        // A single letter that is one slip away from everything explains nothing.
        return NearestName.Find(word, names.Where(name => name.Length > 1 || name.Equals(word, StringComparison.OrdinalIgnoreCase)));
    }

    internal static string? PrefixOf(Dimension dimension) => dimension switch
    {
        Dimension.TemperatureDifference => TemperatureDifferencePrefix,
        Dimension.PressureDifference => PressureDifferencePrefix,
        _ => null,
    };

    private static Unit U(
        string names,
        Dimension dimension,
        ExactNumber factor,
        string description,
        UnitSystem? system,
        ExactNumber offset = default,
        double? us = null,
        double? si = null,
        string? group = null) => new(names, dimension, factor, offset, description)
        {
            System = system,
            UsFrom = us,
            SiFrom = si,
            CompoundGroup = group,
        };
}
