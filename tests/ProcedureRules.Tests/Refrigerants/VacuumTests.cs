using ProcedureRules.Quantities;
using Xunit;

namespace ProcedureRules.Tests.Refrigerants;

/// <summary>Water, air and vacuum against published tables.</summary>
public class VacuumTests
{
    // IAPWS-95 (Wagner and Pruss 2002), as reckoned from its published coefficients; a printed table of boiling points by psia agrees within 0.24 %, one by kPa within 0.09 %.
    [Theory]
    [InlineData(40, 6295)]
    [InlineData(50, 9212)]
    [InlineData(60, 13_259)]
    [InlineData(70, 18_791)]
    [InlineData(80, 26_244)]
    [InlineData(90, 36_151)]
    [InlineData(100, 49_157)]
    [InlineData(120, 87_662)]
    [InlineData(140, 149_615)]
    [InlineData(180, 388_863)]
    [InlineData(212, 760_665)]
    public void Water_Boils_AtThePublishedDepth(double fahrenheit, double micron)
    {
        Assert.Equal(micron, Micron(Call.Of("water_boiling_pressure", Quantity.Of(fahrenheit, "degF"))), micron * 0.0005);
        Assert.Equal(Quantity.Of(fahrenheit, "degF").Low, Call.Of("water_boiling_temperature", Quantity.Of(micron, "micron")).Midpoint!.Value, 0.02);
    }

    // Steam tables, from memory: 20 degC 2.3393 kPa, 50 degC 12.352 kPa, 99.974 degC at one atmosphere.
    [Theory]
    [InlineData("20 degC", 2339.3)]
    [InlineData("50 degC", 12_352)]
    [InlineData("99.974 degC", 101_325)]
    public void Water_Boils_AsInSteamTables(string temperature, double pascal) =>
        Assert.Equal(pascal, Call.Of("water_boiling_pressure", temperature).Midpoint!.Value, pascal * 0.0005);

    // Service literature pairs 5000 micron with 35 degF; IAPWS-95 gives 34.2 degF.
    [Fact]
    public void Water_AtFiveThousandMicron_BoilsJustAboveFreezing() => Assert.Equal(34.2, Fahrenheit("5000 micron"), 0.05);

    // IAPWS R14-08(2011), from memory, with its check value of 8.94735 Pa at 230 K: below the triple point water is ice.
    [Theory]
    [InlineData("230 K", 8.94735)]
    [InlineData("273.16 K", 611.657)]
    public void Ice_TurnsToVapour_AtThePublishedPressure(string temperature, double pascal) =>
        Assert.Equal(pascal, Call.Of("water_boiling_pressure", temperature).Low, pascal * 0.0001);

    [Theory]
    [InlineData("500 micron", -12)]
    [InlineData("1000 micron", 0.8)]
    public void Ice_AtAServiceVacuum_IsFarBelowFreezing(string depth, double fahrenheit) => Assert.Equal(fahrenheit, Fahrenheit(depth), 0.15);

    [Theory]
    [InlineData("611.655 Pa abs")]
    [InlineData("611.66 Pa abs")]
    [InlineData("611.7 Pa abs")]
    public void Water_AtItsTriplePoint_IsNeitherSideOfAGap(string pressure) =>
        Assert.Equal(273.16, Call.Of("water_boiling_temperature", pressure).Midpoint!.Value, 0.001);

    [Theory]
    [InlineData("water_boiling_pressure", "-150 degF")]
    [InlineData("water_boiling_pressure", "710 degF")]
    [InlineData("water_boiling_temperature", "0 psia")]
    [InlineData("water_boiling_temperature", "4000 psia")]
    public void Water_OutOfRange_IsUnknown(string function, string argument) => Assert.False(Call.Of(function, argument).IsBounded);

    // ISO 2533:1975, table by geopotential altitude, from memory.
    [Theory]
    [InlineData(-500, 107_478)]
    [InlineData(0, 101_325)]
    [InlineData(500, 95_461)]
    [InlineData(1000, 89_875)]
    [InlineData(2000, 79_495)]
    [InlineData(3000, 70_109)]
    [InlineData(5000, 54_020)]
    [InlineData(11_000, 22_632)]
    public void Air_AtAnAltitude_IsThatOfTheStandardAtmosphere(double metres, double pascal) =>
        Assert.Equal(pascal, Call.Of("air_pressure", Quantity.Of(metres, "m")).Midpoint!.Value, 1.0);

    // US Standard Atmosphere 1976, from memory: 24.896 inHg at 5000 ft, 20.577 at 10000 ft.
    [Theory]
    [InlineData("0 ft", 29.92)]
    [InlineData("5000 ft", 24.896)]
    [InlineData("10000 ft", 20.577)]
    public void Vacuum_Deepest_FallsWithTheAirAround(string altitude, double inches) =>
        Assert.Equal(inches, Call.Of("deepest_vacuum", Call.Of("air_pressure", altitude)).In(UnitTable.Find("inHg vac")!).Low, 0.005);

    [Theory]
    [InlineData("12000 m")]
    [InlineData("-1000 m")]
    public void Air_OutOfRange_IsUnknown(string altitude) => Assert.False(Call.Of("air_pressure", altitude).IsBounded);

    // A text in the trade pairs 500 micron with 29.5 inHg; at sea level it is 29.90, and 29.5 is about 10700 micron.
    [Fact]
    public void Gauge_OfADeepVacuum_CannotBeToldFromAFairOne()
    {
        Assert.Equal(29.90, Call.Of("gauge_pressure", "500 micron", "1 atm").In(UnitTable.Find("inHg vac")!).Low, 0.005);
        Assert.Equal(10_700, Micron(Call.Of("absolute_pressure", "29.5 inHg vac", "1 atm")), 100.0);
    }

    [Theory]
    [InlineData("vacuum_slowing", 0.25, "500 micron", "900 micron", "1000 micron")]
    [InlineData("vacuum_slowing", 1, "500 micron", "900 micron", "1300 micron")]
    [InlineData("vacuum_rise", 53.329, "500 micron", "700 micron", "5 min", "10 min")]
    [InlineData("vacuum_rise", 0, "500 micron", "500 micron", "5 min", "1 h")]
    public void Rise_OfReadings_IsReckonedToTheirPace(string function, double expected, params string[] arguments) =>
        Assert.Equal(expected, Call.Of(function, arguments).Midpoint!.Value, 0.001);

    [Theory]
    [InlineData("vacuum_slowing", "900 micron", "900 micron", "1000 micron")]
    [InlineData("vacuum_slowing", "900 micron", "500 micron", "1000 micron")]
    [InlineData("vacuum_rise", "500 micron", "700 micron", "0 min", "10 min")]
    [InlineData("vacuum_rise", "500 micron", "700 micron", "5 min", "-1 min")]
    public void Rise_OfReadingsThatSayNothing_IsUnknown(string function, params string[] arguments) => Assert.False(Call.Of(function, arguments).IsBounded);

    private static double Micron(Quantity pressure) => pressure.In(UnitTable.Find("micron")!).Low;

    private static double Fahrenheit(string depth) => Call.Of("water_boiling_temperature", depth).In(UnitTable.Find("degF")!).Low;
}
