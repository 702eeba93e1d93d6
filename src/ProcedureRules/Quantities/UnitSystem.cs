namespace ProcedureRules.Quantities;

/// <summary>The units a text is written in.</summary>
public enum UnitSystem : byte
{
    /// <summary>Inches, pounds, psi, degrees Fahrenheit.</summary>
    Us,

    /// <summary>Millimetres, kilograms, kilopascals, degrees Celsius.</summary>
    Si,
}
