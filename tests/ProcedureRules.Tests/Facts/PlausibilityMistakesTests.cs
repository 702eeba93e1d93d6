using FsCheck.Xunit;
using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Quantities;
using ProcedureRules.Tests.ConsoleHost;
using ProcedureRules.Tests.Engine;
using ProcedureRules.Tests.Packs;
using ProcedureRules.Tests.Repository;
using Xunit;

namespace ProcedureRules.Tests.Facts;

/// <summary>Readings that cannot be right as they stand are asked back, never swallowed.</summary>
public sealed class PlausibilityMistakesTests
{
    // The range of the fact, what is stated, and the figure in the unit that was meant: inches for millimetres, kilograms for pounds, degC for degF ...
    [Theory]
    [InlineData("length", "0.2..1.5 mm", "0.5 in", "0.5 mm")]
    [InlineData("length", "10..60 in", "900 in", "900 mm")]
    [InlineData("area", "1..20 in2", "900 in2", "900 mm2")]
    [InlineData("volume", "3..8 qt", "5000 qt", "5000 mL")]
    [InlineData("volume", "1..12 fl oz", "200 fl oz", "200 mL")]
    [InlineData("mass", "300..900 lb", "250 lb", "250 kg")]
    [InlineData("mass", "1..4 lb", "900 lb", "900 g")]
    [InlineData("mass", "1..4 lb", "32 lb", "32 oz")]
    [InlineData("force", "200..900 lbf", "1800 lbf", "1800 N")]
    [InlineData("torque", "20..60 lb.ft", "5 lb.ft", "5 kgf.m")]
    [InlineData("torque", "20..60 lb.ft", "300 lb.ft", "300 lb.in")]
    [InlineData("gauge_pressure", "10..60 psi", "220 psi", "220 kPa")]
    [InlineData("gauge_pressure", "100..400 psi", "14 psi", "14 bar")]
    [InlineData("absolute_pressure", "100..30000 micron", "5 inHg abs", "5 torr")]
    [InlineData("pressure_difference", "dP 1..15 psi", "dP 60 psi", "dP 60 kPa")]
    [InlineData("temperature", "50..110 degF", "30 degF", "30 degC")]
    [InlineData("temperature", "0..40 degC", "75 degC", "75 degF")]
    [InlineData("temperature_difference", "dT 10..30 degF", "dT 8 degF", "dT 8 degC")]
    [InlineData("duration", "20..120 min", "90 h", "90 min")]
    [InlineData("voltage", "9..15 V", "12600 V", "12600 mV")]
    [InlineData("current", "0.1..5 A", "250 A", "250 mA")]
    [InlineData("resistance", "2..6 ohm", "4 kohm", "4 ohm")]
    [InlineData("angle", "1..30 deg", "0.2 deg", "0.2 rad")]
    [InlineData("speed_of_rotation", "600..1000 rpm", "80 rpm", "80 rad/s")]
    [InlineData("speed", "20..70 mph", "100 mph", "100 km/h")]
    [InlineData("energy", "1..9 kJ", "4000 kJ", "4000 J")]
    [InlineData("power", "0.5..3 kW", "1500 kW", "1500 W")]
    [InlineData("mass_rate", "1..9 lb/min", "70 lb/min", "70 oz/min")]
    [InlineData("volume_rate", "1..9 gal/min", "20 gal/min", "20 L/min")]
    [InlineData("density", "40..70 lb/ft3", "1000 lb/ft3", "1000 kg/m3")]
    public void Read_AFigureInTheWrongUnit_IsDoubtedAndTheUnitGuessed(string dimension, string range, string stated, string likely)
    {
        var (situation, bag) = Read(dimension, range, stated);
        var warning = Assert.Single(bag.Ordered());
        Assert.Equal("PR0505", warning.Code);
        Assert.Equal(Severity.Warning, warning.Severity);
        Assert.Equal(likely, warning.Suggestion);
        Assert.Empty(situation.Observations);
        Assert.Equal(likely, Assert.Single(situation.Doubts).Likely);
    }

    // Counted from the wrong zero: 29.9 inHg below the air is a deep vacuum, 29.9 inHg above nothing is the air itself.
    [Fact]
    public void Read_AVacuumCountedFromTheOtherEnd_IsDoubtedAndConverted()
    {
        var (situation, bag) = Read("absolute_pressure", "100..30000 micron", "29.9 inHg abs");
        Assert.Equal(
            "van.yaml:4:18: warning PR0505: '29.9 inHg abs' is outside what occurs for 'thing.reading': 100..30000 micron; is this the unit you mean? '539.8 micron' would fit, which 29.9 inHg vac is at sea level",
            Assert.Single(bag.Ordered()).ToLine());
        Assert.Equal("539.8 micron", Assert.Single(situation.Doubts).Likely);
    }

    // The pressure of a full bottle at 80 degF as a table in psia gives it, where the gauge shows 14.7 less.
    [Fact]
    public void Read_AGaugePressureTakenFromAnAbsoluteTable_IsDoubtedAndConverted()
    {
        var (_, bag) = Read("gauge_pressure", "60..90 psi", "101 psi");
        Assert.EndsWith("'86.3 psi' would fit, which 101 psia is at sea level", Assert.Single(bag.Ordered()).ToLine(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("gauge_pressure", "0..60 psi", "45 psia", "a gauge pressure is due, not an absolute pressure: one counts from the air around, the other from empty space; at sea level it would be 30.3 psi")]
    [InlineData("absolute_pressure", "100..30000 micron", "29.9 inHg vac", "an absolute pressure is due, not a gauge pressure: one counts from the air around, the other from empty space; at sea level it would be 539.8 micron")]
    public void Read_AGaugeReadingForAnAbsoluteOne_IsRefusedAndConverted(string dimension, string range, string stated, string message)
    {
        var (situation, bag) = Read(dimension, range, stated);
        Assert.Equal($"van.yaml:4:18: error PR0504: {message}", Assert.Single(bag.Ordered()).ToLine());
        Assert.Empty(situation.Observations);
    }

    [Theory]
    [InlineData("mass", "0..9 lb", "-2 lb", "a mass is never below 0 oz")]
    [InlineData("volume", "0..9 qt", "-1 qt", "a volume is never below 0 fl oz")]
    [InlineData("count", "0..9", "-1", "a count is never below 0")]
    [InlineData("duration", "0..9 h", "-1 h", "a duration is never below 0 min")]
    [InlineData("temperature", "0..90 degF", "-500 degF", "a temperature is never below -459.7 degF")]
    [InlineData("absolute_pressure", "1..9 psia", "-1 psia", "an absolute pressure is never below 0 micron")]
    [InlineData("gauge_pressure", "0..60 psi", "-20 psi", "a gauge pressure is never below 32.48 inHg vac")]
    [InlineData("gauge_pressure", "0..60 psi", "40 inHg vac", "a gauge pressure is never below 32.48 inHg vac")]
    [InlineData("resistance", "0..9 ohm", "-1 ohm", "a resistance is never below 0 ohm")]
    public void Read_AFigureThatNothingCanHave_IsRefused(string dimension, string range, string stated, string why)
    {
        var (situation, bag) = Read(dimension, range, stated);
        Assert.Equal($"van.yaml:4:18: error PR0513: '{stated}' cannot be: {why}", Assert.Single(bag.Ordered()).ToLine());
        Assert.Empty(situation.Observations);
        Assert.Empty(situation.Doubts);
    }

    [Theory]
    [InlineData("length", "0..6 in", "5..9 in")]
    [InlineData("length", "0..6 in", "{value: 9 in, sure: yes}")]
    [InlineData("length", "0..6 in", "0 in")]
    [InlineData("length", "-1..6 in", "-0.5 in")]
    [InlineData("gauge_pressure", "-15..60 psi", "29 inHg vac")]
    public void Read_AFigureThatCanBeOrIsSure_IsTaken(string dimension, string range, string stated)
    {
        var (situation, bag) = Read(dimension, range, stated);
        Assert.Empty(bag.Ordered());
        Assert.Single(situation.Observations);
        Assert.Empty(situation.Doubts);
    }

    [Theory]
    [InlineData("[{value: 9 m}, {value: 2 in, source: measured}]", false)]
    [InlineData("[{value: 2 in, source: measured}, {value: 9 m}]", false)]
    [InlineData("[{value: 2 in, source: estimated}, {value: 9 m}]", true)]
    [InlineData("[{value: 9 m, source: measured}, {value: 2 in}]", true)]
    public void Read_ADoubtBesideAGoodReading_StandsUnlessABetterSourceSpoke(string stated, bool isDoubted)
    {
        var (situation, _) = Read("length", "0..6 in", stated);
        Assert.Single(situation.Observations);
        Assert.Equal(isDoubted ? 1 : 0, situation.Doubts.Count);
    }

    [Fact]
    public void State_AnImplausibleFigure_IsAskedBackFirstAndNotReckonedWith()
    {
        var session = Shipped.Open("oil-pan");
        var stated = session.State("oil_pan.drop_available=60 mm");
        Assert.Empty(stated);
        stated = session.State("oil_pan.drop_available=60 in");
        Assert.Equal("60 mm", Assert.Single(stated).Suggestion);

        var key = session.Situation.Doubts.Single().Fact;
        Assert.DoesNotContain(session.Situation.Observations, observation => observation.Fact == key && observation.Source == Source.Measured);
        var question = Shipped.PlanOf(session).Questions.Single(asked => asked.Id == "oil_pan.drop_available");
        Assert.StartsWith("60 in was stated and is not used: it is outside what occurs", question.Doubted!.In(UnitSystem.Us), StringComparison.Ordinal);
        Assert.Contains("while 60 mm would fit", question.Doubted.In(UnitSystem.Us), StringComparison.Ordinal);

        Assert.Empty(session.State("oil_pan.drop_available=6 in"));
        Assert.Empty(session.Situation.Doubts);
        Assert.DoesNotContain(Shipped.PlanOf(session).Questions, asked => asked.Doubted is not null);
    }

    [Fact]
    public void State_AnImplausibleFigureAsSure_IsReckonedWith()
    {
        var session = Shipped.Open("oil-pan");
        Assert.Empty(session.State("oil_pan.drop_available=sure 60 in"));
        Assert.Equal("60 in", session.Beliefs.Fact(KeyOf(session).Part, KeyOf(session).Fact).In(UnitSystem.Us));
    }

    [Fact]
    public void State_AnImplausibleObservation_IsDoubtedAndWithdrawn()
    {
        var session = Shipped.Open("oil-pan");
        var before = session.Beliefs.Fact(KeyOf(session).Part, KeyOf(session).Fact);
        var observation = new Observation(KeyOf(session), Value.Of(KeyOf(session).Fact.Type, Quantity.Of(60, "in")), Source.Measured);
        Assert.Equal("PR0505", Assert.Single(session.State(observation)).Code);
        Assert.Single(session.Situation.Doubts);
        session.Withdraw(KeyOf(session));
        Assert.Empty(session.Situation.Doubts);
        Assert.Equal(before, session.Beliefs.Fact(KeyOf(session).Part, KeyOf(session).Fact));
        Assert.Empty(session.State(observation with { IsSure = true }));
    }

    [Property(MaxTest = 50)]
    public bool Read_AnyLength_IsTakenOrDoubtedAndNeverBoth(int thou, bool isSure)
    {
        var (situation, _) = Read("length", "-1..6 in", $"{{value: {thou} thou, sure: {(isSure ? "yes" : "no")}}}");
        var isTaken = isSure || thou is >= -1000 and <= 6000;
        return situation.Observations.Count == (isTaken ? 1 : 0) && situation.Doubts.Count == (isTaken ? 0 : 1);
    }

    [Fact]
    public void Plan_OfADoubtedReading_ShowsHowToAnswer()
    {
        var (exit, output, error) = RunHost.With("plan", RepositoryFiles.PathOf("samples", "jobs", "oil-pan.yaml"), "--set", "oil_pan.drop_available=60 in");
        Assert.Equal(0, exit);
        Assert.Contains("is this the unit you mean? '60 mm' would fit", error, StringComparison.Ordinal);
        Assert.Contains("60 in was stated and is not used", output, StringComparison.Ordinal);
        Assert.Contains("\"oil_pan.drop_available=sure ...\"", output, StringComparison.Ordinal);
    }

    private static FactKey KeyOf(ProcedureSession session)
    {
        var pan = session.Situation.Parts.Single(part => part.Name == "oil_pan");
        return new FactKey(pan, session.Situation.Vocabulary.FactOf(pan.Kind, "drop_available")!);
    }

    private static (Situation Situation, DiagnosticBag Bag) Read(string dimension, string range, string stated)
    {
        var pack = $$"""
            pack: things
            version: 1.0.0
            about: One thing with one reading.
            kinds:
              vehicle: {}
              thing: {}
            facts:
              thing.reading: {type: {{dimension}}, range: {{range}}, ask: What does it read?}
            """;
        var bag = new DiagnosticBag();
        var sheet = $"vehicle: van\nparts: {{thing: thing}}\nfacts:\n  thing.reading: {stated}\n";
        var situation = new SheetReader(GivenPacks.Read(pack).Packs.Vocabulary, new Dictionary<string, SourceFile>()).Read(new SourceFile("van.yaml", sheet), null, bag)!;
        return (situation, bag);
    }
}
