namespace ProcedureRules.Quantities;

/// <summary>The kind of a quantity. Two kinds that share SI units but not a meaning are two dimensions.</summary>
/// <remarks>
/// A gauge pressure counts from the air around, an absolute pressure from empty space; a temperature is a point on a scale, a
/// temperature difference is not; a torque turns, an energy is spent. Mixing them is how a workshop reads a wrong figure as a right one.
/// </remarks>
public enum Dimension : byte
{
    /// <summary>A pure number or a ratio.</summary>
    Number,

    /// <summary>How many.</summary>
    Count,

    /// <summary>A length, a gap, a travel, in metres.</summary>
    Length,

    /// <summary>An area, in square metres.</summary>
    Area,

    /// <summary>A volume, in cubic metres.</summary>
    Volume,

    /// <summary>A mass, in kilograms.</summary>
    Mass,

    /// <summary>A force, in newtons.</summary>
    Force,

    /// <summary>A torque, in newton metres.</summary>
    Torque,

    /// <summary>An energy, in joules.</summary>
    Energy,

    /// <summary>A power, in watts.</summary>
    Power,

    /// <summary>A pressure above the air around, in pascals; a vacuum is negative.</summary>
    GaugePressure,

    /// <summary>A pressure above empty space, in pascals.</summary>
    AbsolutePressure,

    /// <summary>A drop or rise of pressure, in pascals.</summary>
    PressureDifference,

    /// <summary>A temperature, in kelvins.</summary>
    Temperature,

    /// <summary>A drop or rise of temperature, in kelvins.</summary>
    TemperatureDifference,

    /// <summary>A time that passes, in seconds.</summary>
    Duration,

    /// <summary>A voltage, in volts.</summary>
    Voltage,

    /// <summary>A current, in amperes.</summary>
    Current,

    /// <summary>An electrical resistance, in ohms.</summary>
    Resistance,

    /// <summary>An electric charge, such as a battery holds, in coulombs.</summary>
    ElectricCharge,

    /// <summary>An angle, in radians.</summary>
    Angle,

    /// <summary>A speed of rotation, in radians a second.</summary>
    SpeedOfRotation,

    /// <summary>A speed over ground, in metres a second.</summary>
    Speed,

    /// <summary>A flow by mass, in kilograms a second.</summary>
    MassRate,

    /// <summary>A flow by volume, in cubic metres a second.</summary>
    VolumeRate,

    /// <summary>A density, in kilograms a cubic metre.</summary>
    Density,
}
