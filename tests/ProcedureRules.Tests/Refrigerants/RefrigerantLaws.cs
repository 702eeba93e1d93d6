using FsCheck.Xunit;
using ProcedureRules.Quantities;
using ProcedureRules.Refrigerants;

namespace ProcedureRules.Tests.Refrigerants;

/// <summary>What holds of the functions for any arguments: they enclose, rise, narrow and come back.</summary>
[Properties(MaxTest = 400)]
public class RefrigerantLaws
{
    [Property]
    public bool Saturation_OfATemperatureWithin_LiesWithin(byte which, ushort a, ushort b, byte place)
    {
        var (name, low, high) = Range(which, a, b);
        var all = Call.Of("saturation_pressure", name, Kelvin(low, high));
        var inside = low + ((high - low) * (place / 255.0));
        return all.Contains(Call.Of("saturation_pressure", name, Kelvin(inside, inside)))
            && Call.Of("saturation_temperature", name, all).Contains(Kelvin(low, high));
    }

    [Property]
    public bool Temperature_OfAPressureWithin_LiesWithin(byte which, ushort a, ushort b, byte place)
    {
        var range = Refrigerant.All[which % Refrigerant.All.Count].Pressures;
        var name = Refrigerant.All[which % Refrigerant.All.Count].Name;
        var (low, high) = Ends(range, a, b);
        var inside = Math.Clamp(low + ((high - low) * (place / 255.0)), low, high);
        var all = Call.Of("saturation_temperature", name, Pascal(low, high));
        return all.Contains(Call.Of("saturation_temperature", name, Pascal(inside, inside)));
    }

    [Property]
    public bool Saturation_ThereAndBack_IsWhereItStarted(byte which, ushort a)
    {
        var (name, kelvin, _) = Range(which, a, a);
        var back = Call.Of("saturation_temperature", name, Call.Of("saturation_pressure", name, Kelvin(kelvin, kelvin)));
        return back.Low <= kelvin && kelvin <= back.High && back.High - back.Low < 1e-9;
    }

    [Property]
    public bool Saturation_OfAHigherTemperature_IsHigher(byte which, ushort a, ushort b)
    {
        var (name, low, high) = Range(which, a, b);
        if (high - low < 1e-6) return true;
        return Call.Of("saturation_pressure", name, Kelvin(low, low)).High < Call.Of("saturation_pressure", name, Kelvin(high, high)).Low;
    }

    [Property]
    public bool Water_ThereAndBackAndRising(ushort a, ushort b, byte place)
    {
        var (low, high) = Ends(Kelvin(173.15, 647.096), a, b);
        var all = Call.Of("water_boiling_pressure", Kelvin(low, high));
        var inside = Math.Clamp(low + ((high - low) * (place / 255.0)), low, high);
        var back = Call.Of("water_boiling_temperature", Call.Of("water_boiling_pressure", Kelvin(inside, inside)));
        return all.Contains(Call.Of("water_boiling_pressure", Kelvin(inside, inside))) && back.Low <= inside && inside <= back.High && back.High - back.Low < 1e-9
            && Call.Of("water_boiling_temperature", all).Contains(Kelvin(low, high));
    }

    [Property]
    public bool Air_HigherUp_IsThinner(ushort a, ushort b, byte place)
    {
        var (low, high) = Ends(StandardAtmosphere.Altitudes, a, b);
        var inside = Math.Clamp(low + ((high - low) * (place / 255.0)), low, high);
        var all = StandardAtmosphere.AirPressure(Metres(low, high));
        return all.Contains(StandardAtmosphere.AirPressure(Metres(inside, inside)))
            && (high - low < 1e-3 || StandardAtmosphere.AirPressure(Metres(high, high)).High < StandardAtmosphere.AirPressure(Metres(low, low)).Low);
    }

    [Property]
    public bool Gauge_AndBack_HoldsTheReading(ushort a, ushort b, ushort air)
    {
        var (low, high) = Ends(Pascal(0, 4e6), a, b);
        var around = Pascal(20_000 + air, 20_000 + air);
        var gauge = Call.Of("gauge_pressure", Pascal(low, high), around);
        return Call.Of("absolute_pressure", gauge, around).Contains(Pascal(low, high)) && gauge.Low >= Call.Of("deepest_vacuum", around).Low;
    }

    [Property]
    public bool Rise_OfReadingsWithin_LiesWithin(ushort a, ushort b, ushort c, byte width, byte place)
    {
        var (first, middle, last) = (Wide(a, width), Wide(b, width), Wide(c, width));
        var (x, y, z) = (Inside(first, place), Inside(middle, (byte)~place), Inside(last, place));
        var (took, over) = (Quantity.Read("4..5 min"), Quantity.Read("10 min"));
        return Call.Of("vacuum_slowing", first, middle, last).Contains(Call.Of("vacuum_slowing", x, y, z))
            && Call.Of("vacuum_rise", first, last, took, over).Contains(Call.Of("vacuum_rise", x, z, Quantity.Read("4.5 min"), over));
    }

    [Property]
    public bool Charge_OfAMassWithin_LiesWithinAndBelowTheOldCharge(ushort a, ushort b, byte place)
    {
        var mass = Quantity.Between(Math.Min(a, b) / 1000.0, Math.Max(a, b) / 1000.0, Dimension.Mass);
        var inside = Inside(mass, place);
        var band = Call.Of("r12_to_r134a_charge", mass);
        var start = Call.Of("r12_to_r134a_start", inside);
        return band.Contains(Call.Of("r12_to_r134a_charge", inside)) && band.Contains(start) && start.High <= inside.High;
    }

    private static (string Name, double Low, double High) Range(byte which, ushort a, ushort b)
    {
        var refrigerant = Refrigerant.All[which % Refrigerant.All.Count];
        var (low, high) = Ends(refrigerant.Temperatures, a, b);
        return (refrigerant.Name, low, high);
    }

    private static (double Low, double High) Ends(Quantity range, ushort a, ushort b) => (Place(range, Math.Min(a, b)), Place(range, Math.Max(a, b)));

    private static double Place(Quantity range, ushort at) =>
        Math.Clamp(range.Low + ((range.High - range.Low) * (at / (double)ushort.MaxValue)), range.Low, range.High);

    private static Quantity Wide(ushort at, byte width) => Pascal(at, at + width);

    private static Quantity Inside(Quantity range, byte place)
    {
        var value = Math.Clamp(range.Low + ((range.High - range.Low) * (place / 255.0)), range.Low, range.High);
        return Quantity.Point(value, range.Dimension);
    }

    private static Quantity Kelvin(double low, double high) => Quantity.Between(low, high, Dimension.Temperature);

    private static Quantity Pascal(double low, double high) => Quantity.Between(low, high, Dimension.AbsolutePressure);

    private static Quantity Metres(double low, double high) => Quantity.Between(low, high, Dimension.Length);
}
