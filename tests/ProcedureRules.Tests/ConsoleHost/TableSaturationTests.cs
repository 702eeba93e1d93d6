using System.Text.Json;
using Xunit;

namespace ProcedureRules.Tests.ConsoleHost;

/// <summary>The table of boiling pressures as a person or a script meets it.</summary>
public class TableSaturationTests
{
    [Fact]
    public void Text_FromZeroToAHundredAndTwenty_ShowsRowsAndBasisWithinEightyColumns()
    {
        var (exit, output, error) = RunHost.With("table", "saturation", "R-134a", "--from", "0", "--to", "120", "--step", "40");
        Assert.Equal(0, exit);
        Assert.Empty(error);
        Assert.StartsWith(
            """
            R-134a, saturation: liquid and vapour together

            degF    psig    degC   kPaAbs
               0     6.5   -17.8    146.0
              40    35.0     4.4    343.0
              80    86.7    26.7    699.0
             120   171.2    48.9   1281.5

            psig as a gauge shows it at sea level, in air of 14.7 psia.
            """.ReplaceLineEndings("\n"),
            output,
            StringComparison.Ordinal);
        Assert.Contains("Basis: short equation to Tillner-Roth and Baehr", output, StringComparison.Ordinal);
        Assert.All(output.Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    // The figures are those of the equation of state: see SaturationTests.
    [Theory]
    [InlineData("R-134a", 71.1, 591.6)]
    [InlineData("r12", 70.1, 584.4)]
    [InlineData("R1234yf", 74.0, 611.2)]
    public void Json_OfOneRow_HasTheNamedProperties(string refrigerant, double psig, double kilopascal)
    {
        var (exit, output, _) = RunHost.With("table", "saturation", refrigerant, "--from", "70", "--to", "70", "--format", "json");
        Assert.Equal(0, exit);
        using var json = JsonDocument.Parse(output);
        var row = Assert.Single(json.RootElement.GetProperty("rows").EnumerateArray());
        Assert.Equal(["degF", "psig", "degC", "kPaAbs"], row.EnumerateObject().Select(property => property.Name));
        Assert.Equal(70, row.GetProperty("degF").GetDouble());
        Assert.Equal(psig, row.GetProperty("psig").GetDouble(), 0.2);
        Assert.Equal(21.11, row.GetProperty("degC").GetDouble());
        Assert.Equal(kilopascal, row.GetProperty("kPaAbs").GetDouble(), kilopascal * 0.005);
        Assert.NotEmpty(json.RootElement.GetProperty("basis").EnumerateArray());
    }

    [Fact]
    public void Rows_WithoutStep_AreFiveDegreesApart()
    {
        var (_, output, _) = RunHost.With("table", "saturation", "R-134a", "--from", "-20", "--to", "160", "--format", "json");
        using var json = JsonDocument.Parse(output);
        Assert.Equal(
            Enumerable.Range(0, 37).Select(i => -20.0 + (5 * i)),
            json.RootElement.GetProperty("rows").EnumerateArray().Select(row => row.GetProperty("degF").GetDouble()));
    }

    [Fact]
    public void Rows_OutOfRange_SaySo()
    {
        var (exit, output, _) = RunHost.With("table", "saturation", "R-1234yf", "--from", "-80", "--to", "220", "--step", "100");
        Assert.Equal(0, exit);
        Assert.Contains(" -80       -   -62.2        -   unknown: the equation starts at -63.67 degF", output, StringComparison.Ordinal);
        Assert.Contains(" 220       -   104.4        -   above the critical temperature, 202.5 degF:", output, StringComparison.Ordinal);
        (_, output, _) = RunHost.With("table", "saturation", "R-1234yf", "--from", "220", "--to", "220", "--format", "json");
        using var json = JsonDocument.Parse(output);
        var row = json.RootElement.GetProperty("rows")[0];
        Assert.Equal(JsonValueKind.Null, row.GetProperty("psig").ValueKind);
        Assert.Equal(JsonValueKind.Null, row.GetProperty("kPaAbs").ValueKind);
        Assert.Contains("no saturation", row.GetProperty("note").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Rows_BelowTheAirAround_NameTheVacuum()
    {
        var (_, output, _) = RunHost.With("table", "saturation", "R-134a", "--from", "-20", "--to", "-20");
        Assert.Contains(" -20   -1.8   -28.9     88.9   3.7 inHg vac", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Altitude_OfFiveThousandFeet_RaisesTheGaugeAndNamesItsSource()
    {
        var (_, output, _) = RunHost.With("table", "saturation", "R-134a", "--from", "70", "--to", "70", "--altitude", "5000");
        Assert.Contains("  70   73.6", output, StringComparison.Ordinal);
        Assert.Contains("at 5000 ft, in air of 12.23 psia", output, StringComparison.Ordinal);
        Assert.Contains("ISO 2533", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2 degC")]
    [InlineData("dT 2 degC")]
    [InlineData("3.6")]
    public void Temperatures_InCelsius_AreTaken(string step)
    {
        var (_, output, _) = RunHost.With("table", "saturation", "R-12", "--from", "20 degC", "--to", "24degC", "--step", step);
        Assert.Contains("71.6   72.2   22.0", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no saturation table of 'R-22' is known, only of R-12, R-134a, R-1234yf\n", "R-22")]
    [InlineData("--step has to be more than 0\n", "R-12", "--step", "0")]
    [InlineData("--step has to be more than 0\n", "R-12", "--step", "-5")]
    [InlineData("--to lies below --from\n", "R-12", "--from", "100", "--to", "50")]
    [InlineData("that is more than 1000 rows: use a larger --step\n", "R-12", "--step", "0.001")]
    [InlineData("--altitude has to be from -1640 to 36089 ft\n", "R-12", "--altitude", "50000")]
    [InlineData("--from 'warm': a number is due, not 'warm'\n", "R-12", "--from", "warm")]
    [InlineData("--to '3 in': a temperature is due, not a length\n", "R-12", "--to", "3 in")]
    [InlineData("--to '3..5 degF': one figure is due, not a range\n", "R-12", "--to", "3..5 degF")]
    public void Table_AskedForWrongly_SaysWhat(string mistake, params string[] args)
    {
        var (exit, output, error) = RunHost.With(["table", "saturation", .. args]);
        Assert.Equal(2, exit);
        Assert.Empty(output);
        Assert.Equal(mistake, error);
    }

    [Theory]
    [InlineData("table")]
    [InlineData("table", "saturation")]
    [InlineData("table", "saturation", "R-12", "--format", "xml")]
    public void Table_ALineThatIsNone_CouldNotRun(params string[] args) => Assert.Equal(1, RunHost.With(args).Exit);
}
