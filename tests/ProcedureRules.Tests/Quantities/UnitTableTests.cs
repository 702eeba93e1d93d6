using ProcedureRules.Quantities;
using UnitsNet.Units;
using Xunit;
using Dim = ProcedureRules.Quantities.Dimension;
using Quantity = ProcedureRules.Quantities.Quantity;
using UnitSystem = ProcedureRules.Quantities.UnitSystem;

namespace ProcedureRules.Tests.Quantities;

public class UnitTableTests
{
    // NIST Special Publication 811 (2008), appendix B: factors to the SI unit; psi is the ratio of its exact pound-force and inch,
    // worked out in fractions. Where the source gives seven digits only (inch of mercury) so
    // does the table; micron is its torr over a thousand; horsepower is that of 550 foot pounds-force a second.
    [Theory]
    [InlineData("in", 0.0254)]
    [InlineData("ft", 0.3048)]
    [InlineData("mil", 0.0000254)]
    [InlineData("lb", 0.45359237)]
    [InlineData("oz", 0.028349523125)]
    [InlineData("lbf", 4.4482216152605)]
    [InlineData("kgf", 9.80665)]
    [InlineData("psi", 6894.757293168362)]
    [InlineData("psia", 6894.757293168362)]
    [InlineData("lb.ft", 1.3558179483314004)]
    [InlineData("lb.in", 0.1129848290276167)]
    [InlineData("qt", 0.000946352946)]
    [InlineData("gal", 0.003785411784)]
    [InlineData("fl oz", 0.0000295735295625)]
    [InlineData("inHg abs", 3386.389)]
    [InlineData("inHg vac", -3386.389)]
    [InlineData("torr", 133.32236842105263)]
    [InlineData("micron", 0.13332236842105263)]
    [InlineData("bar", 100000)]
    [InlineData("atm", 101325)]
    [InlineData("hp", 745.6998715822702)]
    [InlineData("dT degF", 0.5555555555555556)]
    public void Factor_OfAPublishedUnit_IsThePublishedFactor(string unit, double factor) =>
        Assert.Equal(factor, UnitTable.Find(unit)!.Factor);

    [Theory]
    [InlineData("32 degF", 273.15)]
    [InlineData("212 degF", 373.15)]
    [InlineData("-459.67 degF", 0)]
    [InlineData("-40 degF", 233.15)]
    [InlineData("-40 degC", 233.15)]
    public void Temperature_OnAScale_IsThePublishedPoint(string text, double kelvin) =>
        Assert.Equal(Quantity.Point(kelvin, Dim.Temperature), Quantity.Read(text));

    public static TheoryData<string, Enum> ReferenceUnits => new()
    {
        { "in", LengthUnit.Inch }, { "ft", LengthUnit.Foot }, { "thou", LengthUnit.Mil }, { "mm", LengthUnit.Millimeter },
        { "um", LengthUnit.Micrometer }, { "mi", LengthUnit.Mile }, { "sq in", AreaUnit.SquareInch }, { "ft2", AreaUnit.SquareFoot },
        { "mm2", AreaUnit.SquareMillimeter }, { "fl oz", VolumeUnit.UsOunce }, { "pt", VolumeUnit.UsPint }, { "qt", VolumeUnit.UsQuart },
        { "gal", VolumeUnit.UsGallon }, { "in3", VolumeUnit.CubicInch }, { "cc", VolumeUnit.CubicCentimeter }, { "L", VolumeUnit.Liter },
        { "oz", MassUnit.Ounce }, { "lb", MassUnit.Pound }, { "g", MassUnit.Gram }, { "lbf", ForceUnit.PoundForce },
        { "kgf", ForceUnit.KilogramForce }, { "kN", ForceUnit.Kilonewton }, { "lb.ft", TorqueUnit.PoundForceFoot },
        { "in-lb", TorqueUnit.PoundForceInch }, { "kgf.m", TorqueUnit.KilogramForceMeter }, { "kJ", EnergyUnit.Kilojoule },
        { "Wh", EnergyUnit.WattHour }, { "kW", PowerUnit.Kilowatt }, { "hp", PowerUnit.MechanicalHorsepower },
        { "psi", PressureUnit.PoundForcePerSquareInch }, { "bar", PressureUnit.Bar }, { "mbar", PressureUnit.Millibar },
        { "kPa abs", PressureUnit.Kilopascal }, { "torr", PressureUnit.Torr }, { "atm", PressureUnit.Atmosphere },
        { "inHg abs", PressureUnit.InchOfMercury }, { "inH2O", PressureUnit.InchOfWaterColumn },
        { "degF", TemperatureUnit.DegreeFahrenheit }, { "degC", TemperatureUnit.DegreeCelsius },
        { "dT degF", TemperatureDeltaUnit.DegreeFahrenheit }, { "min", DurationUnit.Minute }, { "h", DurationUnit.Hour }, { "d", DurationUnit.Day },
        { "mV", ElectricPotentialUnit.Millivolt }, { "mA", ElectricCurrentUnit.Milliampere }, { "kohm", ElectricResistanceUnit.Kiloohm },
        { "Ah", ElectricChargeUnit.AmpereHour }, { "deg", AngleUnit.Degree }, { "rpm", RotationalSpeedUnit.RevolutionPerMinute },
        { "mph", SpeedUnit.MilePerHour }, { "km/h", SpeedUnit.KilometerPerHour }, { "lb/min", MassFlowUnit.PoundPerMinute },
        { "g/s", MassFlowUnit.GramPerSecond }, { "gal/min", VolumeFlowUnit.UsGallonPerMinute }, { "L/min", VolumeFlowUnit.LiterPerMinute },
        { "lb/ft3", DensityUnit.PoundPerCubicFoot }, { "kg/L", DensityUnit.KilogramPerLiter }, { "lb/gal", DensityUnit.PoundPerUSGallon },
    };

    /// <summary>UnitsNet 5.75 rounds some of its factors to five or six figures (horsepower, pound a minute), so agreement is asked for to five.</summary>
    [Theory]
    [MemberData(nameof(ReferenceUnits))]
    public void Quantity_InAUnit_AgreesWithUnitsNet(string unit, Enum reference)
    {
        var si = (double)UnitsNet.Quantity.From(7.25, reference).ToUnit(BaseUnitOf(reference)).Value;
        var (low, high) = (Quantity.Of(7.25, unit).Low, Quantity.Of(7.25, unit).High);
        Assert.Equal(low, high);
        Assert.InRange(Math.Abs((low / si) - 1), 0, 2e-5);
    }

    [Fact]
    public void Names_OfADimensionsPrefix_AreUniqueWhateverTheirCase()
    {
        // Litres are written both ways, and so are the millilitres: one unit may say a name twice, two units may not.
        var clashes = UnitTable.All
            .SelectMany(unit => unit.Names.Select(name => (unit, key: $"{unit.Prefix} {(name.Length == 1 ? name : name.ToUpperInvariant())}")))
            .GroupBy(entry => entry.key)
            .Where(group => group.Select(entry => entry.unit).Distinct().Count() > 1)
            .Select(group => group.Key);
        Assert.Empty(clashes);
    }

    [Fact]
    public void Find_OfEverySpelling_IsItsUnit() => Assert.All(
        UnitTable.All.SelectMany(unit => unit.Names.Select(name => (unit, name))),
        entry =>
        {
            var spelled = entry.unit.Prefix is null ? entry.name : $"{entry.unit.Prefix} {entry.name}";
            Assert.Same(entry.unit, UnitTable.Find(spelled));
            Assert.True(Quantity.TryRead(
                entry.unit.Prefix is null ? $"7 {entry.name}" : $"{entry.unit.Prefix} 7 {entry.name}", out var value, out _));
            Assert.Equal(entry.unit.Dimension, value.Dimension);
            Assert.NotEmpty(entry.unit.Description);
        });

    [Fact]
    public void Table_OfEveryDimensionButNumbers_CanPrintBothSystems() => Assert.All(
        Dimensions.All.Where(dimension => dimension is not (Dim.Number or Dim.Count)),
        dimension =>
        {
            Assert.Contains(UnitTable.For(dimension), unit => unit.UsFrom == 0);
            Assert.Contains(UnitTable.For(dimension), unit => unit.SiFrom == 0);
            Assert.DoesNotContain(UnitTable.For(dimension), unit => unit.System == UnitSystem.Us && unit.SiFrom is not null);
            Assert.DoesNotContain(UnitTable.For(dimension), unit => unit.System == UnitSystem.Si && unit.UsFrom is not null);
        });

    [Theory]
    [InlineData("pis", "psi")]
    [InlineData("thuo", "thou")]
    [InlineData("inchs", "inch")]
    [InlineData("xyzzy", null)]
    [InlineData("", null)]
    public void Nearest_OfAMisspeltUnit_IsTheUnitMeant(string word, string? expected) => Assert.Equal(expected, UnitTable.Nearest(word));

    [Fact]
    public void In_OfADepthOfVacuum_PutsTheLesserFigureFirst()
    {
        var vacuum = Quantity.Read("20..29 inHg vac");
        Assert.Equal((20, 29), vacuum.In(UnitTable.Find("inHg vac")!));
        Assert.Throws<ArgumentException>(() => vacuum.In(UnitTable.Find("in")!));
        Assert.Throws<ArgumentException>(() => Quantity.Of(1, "furlong"));
    }

    private static Enum BaseUnitOf(Enum unit) => unit switch
    {
        LengthUnit => LengthUnit.Meter,
        AreaUnit => AreaUnit.SquareMeter,
        VolumeUnit => VolumeUnit.CubicMeter,
        MassUnit => MassUnit.Kilogram,
        ForceUnit => ForceUnit.Newton,
        TorqueUnit => TorqueUnit.NewtonMeter,
        EnergyUnit => EnergyUnit.Joule,
        PowerUnit => PowerUnit.Watt,
        PressureUnit => PressureUnit.Pascal,
        TemperatureUnit => TemperatureUnit.Kelvin,
        TemperatureDeltaUnit => TemperatureDeltaUnit.Kelvin,
        DurationUnit => DurationUnit.Second,
        ElectricPotentialUnit => ElectricPotentialUnit.Volt,
        ElectricCurrentUnit => ElectricCurrentUnit.Ampere,
        ElectricResistanceUnit => ElectricResistanceUnit.Ohm,
        ElectricChargeUnit => ElectricChargeUnit.Coulomb,
        AngleUnit => AngleUnit.Radian,
        RotationalSpeedUnit => RotationalSpeedUnit.RadianPerSecond,
        SpeedUnit => SpeedUnit.MeterPerSecond,
        MassFlowUnit => MassFlowUnit.KilogramPerSecond,
        VolumeFlowUnit => VolumeFlowUnit.CubicMeterPerSecond,
        DensityUnit => DensityUnit.KilogramPerCubicMeter,
        _ => throw new InvalidOperationException(unit.ToString()),
    };
}
