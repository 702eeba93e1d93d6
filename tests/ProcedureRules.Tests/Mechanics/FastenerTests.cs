using ProcedureRules.Mechanics;
using ProcedureRules.Quantities;
using Xunit;

namespace ProcedureRules.Tests.Mechanics;

/// <summary>Strength and torque of bolts, against published tables.</summary>
public class FastenerTests
{
    // Source: published tensile stress areas of unified threads (ASME B1.1), in square inches.
    [Theory]
    [InlineData("1/4", 20, 0.0318)]
    [InlineData("1/4", 28, 0.0364)]
    [InlineData("5/16", 18, 0.0524)]
    [InlineData("5/16", 24, 0.058)]
    [InlineData("3/8", 16, 0.0775)]
    [InlineData("3/8", 24, 0.0878)]
    [InlineData("7/16", 14, 0.1063)]
    [InlineData("7/16", 20, 0.1187)]
    [InlineData("1/2", 13, 0.1419)]
    [InlineData("1/2", 20, 0.1599)]
    [InlineData("9/16", 12, 0.1819)]
    [InlineData("9/16", 18, 0.203)]
    [InlineData("5/8", 11, 0.226)]
    [InlineData("5/8", 18, 0.256)]
    public void StressArea_OfInchThreads_IsThePublishedOne(string size, int threadsPerInch, double squareInches) =>
        Assert.Equal(squareInches, Area("inch", Call.Read(size + " in"), Quantity.Of(1.0 / threadsPerInch, "in")).In("in2"), 0.0001);

    // Source: published tensile stress areas of ISO metric coarse threads (ISO 898-1), in square millimetres; M14 is tabulated rounded.
    [Theory]
    [InlineData(5, 0.8, 14.2)]
    [InlineData(6, 1, 20.1)]
    [InlineData(7, 1, 28.9)]
    [InlineData(8, 1.25, 36.6)]
    [InlineData(10, 1.5, 58.0)]
    [InlineData(12, 1.75, 84.3)]
    [InlineData(14, 2, 115)]
    public void StressArea_OfMetricThreads_IsThePublishedOne(double millimetres, double pitch, double squareMillimetres) =>
        Assert.Equal(squareMillimetres, Area("metric", Quantity.Of(millimetres, "mm"), Quantity.Of(pitch, "mm")).In("mm2"), millimetres == 14 ? 0.5 : 0.05);

    // Source: ISO 898-1, proof loads of coarse threads, in newtons; tabulated to three figures.
    [Theory]
    [InlineData(5, 0.8, 3200, 8230, 11800, 13800)]
    [InlineData(6, 1, 4520, 11600, 16700, 19500)]
    [InlineData(7, 1, 6500, 16800, 24000, 28000)]
    [InlineData(8, 1.25, 8240, 21200, 30400, 35500)]
    [InlineData(10, 1.5, 13000, 33700, 48100, 56300)]
    [InlineData(12, 1.75, 19000, 48900, 70000, 81800)]
    [InlineData(14, 2, 25900, 66700, 95500, 112000)]
    public void ProofLoad_OfMetricBolts_IsThePublishedOne(double millimetres, double pitch, double class46, double class88, double class109, double class129)
    {
        Check("class_4_6", class46);
        Check("class_8_8", class88);
        Check("class_10_9", class109);
        Check("class_12_9", class129);

        void Check(string grade, double newtons) =>
            Assert.Equal(newtons, Call.Of("proof_load", grade, Quantity.Of(millimetres, "mm"), Quantity.Of(pitch, "mm")).In("N"), newtons * 0.007);
    }

    // Source: SAE J429, proof stress by size, in psi; ISO 898-1, in MPa. ISO 3506-1 A2-70: 0.2 % proof strength, from memory.
    [Theory]
    [InlineData("grade_1", "1/4 in", 33000)]
    [InlineData("grade_2", "3/4 in", 55000)]
    [InlineData("grade_2", "7/8 in", 33000)]
    [InlineData("grade_5", "1 in", 85000)]
    [InlineData("grade_5", "1 1/8 in", 74000)]
    [InlineData("grade_8", "1 1/2 in", 120000)]
    [InlineData("class_4_6", "8 mm", 32633.4)] // 225 MPa
    [InlineData("class_8_8", "16 mm", 84121.9)] // 580 MPa
    [InlineData("class_8_8", "18 mm", 87022.6)] // 600 MPa
    [InlineData("class_10_9", "12 mm", 120381.3)] // 830 MPa
    [InlineData("class_12_9", "12 mm", 140686.6)] // 970 MPa
    [InlineData("stainless_a2_70", "8 mm", 65267)] // 450 MPa
    public void ProofStress_BySize_IsTheStandards(string grade, string diameter, double psi) =>
        Assert.Equal(psi, Call.Of("proof_stress", grade, diameter).In("dP psi"), 0.5);

    [Fact]
    public void ProofStress_OfADiameterAcrossTwoRanges_HoldsBoth()
    {
        var (low, high) = Call.Of("proof_stress", "grade_2", "0.7..0.8 in").In(UnitTable.Find("dP psi")!);
        Assert.Equal((33000, 55000), (Math.Round(low), Math.Round(high)));
    }

    [Theory]
    [InlineData("grade_5", "3/16 in")]
    [InlineData("grade_8", "2 in")]
    [InlineData("stainless_a2_70", "30 mm")]
    public void ProofStress_OutsideTheStandard_IsAnything(string grade, string diameter) =>
        Assert.Equal(Quantity.Anything(Dimension.PressureDifference), Call.Of("proof_stress", grade, diameter));

    // Source: a published bolt torque and tension table for SAE J429 grades, clamp at 75 % of the proof load, torque = K x diameter x clamp
    // at K 0.15, 0.18 and 0.20; torques are rounded to whole units there, and were found to agree within that for all 108 entries.
    [Theory]
    [InlineData("grade_2", "1/4", 20, 1313, "lb.in", 49, 59, 66)]
    [InlineData("grade_5", "1/4", 20, 2029, "lb.in", 76, 91, 101)]
    [InlineData("grade_8", "1/4", 20, 2864, "lb.in", 107, 129, 143)]
    [InlineData("grade_2", "5/16", 18, 2163, "lb.in", 101, 122, 135)]
    [InlineData("grade_5", "5/16", 18, 3342, "lb.in", 157, 188, 209)]
    [InlineData("grade_8", "5/16", 18, 4719, "lb.in", 221, 265, 295)]
    [InlineData("grade_2", "3/8", 16, 3196, "lb.ft", 15, 18, 20)]
    [InlineData("grade_5", "3/8", 16, 4940, "lb.ft", 23, 28, 31)]
    [InlineData("grade_8", "3/8", 16, 6974, "lb.ft", 33, 39, 44)]
    [InlineData("grade_2", "7/16", 14, 4385, "lb.ft", 24, 29, 32)]
    [InlineData("grade_5", "7/16", 14, 6777, "lb.ft", 37, 44, 49)]
    [InlineData("grade_8", "7/16", 14, 9568, "lb.ft", 52, 63, 70)]
    [InlineData("grade_2", "1/2", 13, 5853, "lb.ft", 37, 44, 49)]
    [InlineData("grade_5", "1/2", 13, 9046, "lb.ft", 57, 68, 75)]
    [InlineData("grade_8", "1/2", 13, 12771, "lb.ft", 80, 96, 106)]
    [InlineData("grade_2", "5/8", 11, 9323, "lb.ft", 73, 87, 97)]
    [InlineData("grade_5", "5/8", 11, 14408, "lb.ft", 113, 135, 150)]
    [InlineData("grade_8", "5/8", 11, 20340, "lb.ft", 159, 191, 212)]
    [InlineData("grade_2", "1/4", 28, 1500, "lb.in", 56, 68, 75)]
    [InlineData("grade_5", "1/4", 28, 2319, "lb.in", 87, 104, 116)]
    [InlineData("grade_8", "1/4", 28, 3274, "lb.in", 123, 147, 164)]
    [InlineData("grade_2", "5/16", 24, 2395, "lb.in", 112, 135, 150)]
    [InlineData("grade_5", "5/16", 24, 3702, "lb.in", 174, 208, 231)]
    [InlineData("grade_8", "5/16", 24, 5226, "lb.in", 245, 294, 327)]
    [InlineData("grade_2", "3/8", 24, 3623, "lb.ft", 17, 20, 23)]
    [InlineData("grade_5", "3/8", 24, 5599, "lb.ft", 26, 31, 35)]
    [InlineData("grade_8", "3/8", 24, 7905, "lb.ft", 37, 44, 49)]
    [InlineData("grade_2", "7/16", 20, 4897, "lb.ft", 27, 32, 36)]
    [InlineData("grade_5", "7/16", 20, 7568, "lb.ft", 41, 50, 55)]
    [InlineData("grade_8", "7/16", 20, 10684, "lb.ft", 58, 70, 78)]
    [InlineData("grade_2", "1/2", 20, 6598, "lb.ft", 41, 49, 55)]
    [InlineData("grade_5", "1/2", 20, 10197, "lb.ft", 64, 76, 85)]
    [InlineData("grade_8", "1/2", 20, 14396, "lb.ft", 90, 108, 120)]
    [InlineData("grade_2", "5/8", 18, 10558, "lb.ft", 82, 99, 110)]
    [InlineData("grade_5", "5/8", 18, 16317, "lb.ft", 127, 153, 170)]
    [InlineData("grade_8", "5/8", 18, 23036, "lb.ft", 180, 216, 240)]
    public void ChartTorque_OfTheWholeTable_IsThePublishedOne(string grade, string size, int threadsPerInch, double clamp, string unit, double at015, double at018, double at020)
    {
        var (diameter, pitch) = (Call.Read(size + " in"), Quantity.Of(1.0 / threadsPerInch, "in"));
        Assert.Equal(clamp, 0.75 * Call.Of("proof_load", grade, diameter, pitch).In("lbf"), clamp * 0.0004);
        Check(0.15, at015);
        Check(0.18, at018);
        Check(0.20, at020);

        void Check(double factor, double torque) =>
            Assert.Equal(torque, Call.Of("chart_torque", grade, diameter, pitch, Quantity.Number(factor)).In(unit), 0.51);
    }

    // Source: published ranges of nut factors by surface.
    [Theory]
    [InlineData("dry_steel", 0.18, 0.27)]
    [InlineData("oiled", 0.10, 0.26)]
    [InlineData("cadmium", 0.15, 0.19)]
    [InlineData("phosphate_oiled", 0.15, 0.22)]
    [InlineData("zinc", 0.17, 0.35)]
    [InlineData("stainless", 0.30, 0.50)]
    public void NutFactor_OfASurface_IsThePublishedRange(string surface, double low, double high) =>
        Assert.Equal(Quantity.Between(low, high, Dimension.Number), Call.Of("nut_factor", surface));

    [Fact]
    public void ChartTorque_OfARangeOfNutFactors_IsARange()
    {
        var torque = Call.Of("chart_torque", "grade_5", Call.Read("3/8 in"), Quantity.Of(1.0 / 16, "in"), Quantity.Between(0.15, 0.20, Dimension.Number));
        var (low, high) = torque.In(UnitTable.Find("lb.ft")!);
        Assert.Equal((23.16, 30.87), (Math.Round(low, 2), Math.Round(high, 2)));
    }

    [Theory]
    [InlineData("3/8 in", "0 in")]
    [InlineData("3/8 in", "1/2 in")]
    [InlineData("-3/8 in", "1/16 in")]
    public void StressArea_OfAThreadThatCannotBe_IsAnything(string diameter, string pitch) =>
        Assert.Equal(Quantity.Anything(Dimension.Area), Area("inch", Call.Read(diameter), Call.Read(pitch)));

    [Fact]
    public void ChartTorque_WithoutFriction_IsAnything() =>
        Assert.Equal(Quantity.Anything(Dimension.Torque), Call.Of("chart_torque", "grade_5", Call.Read("3/8 in"), Call.Read("1/16 in"), Quantity.Number(0)));

    [Theory]
    [InlineData("5", "grade_5")]
    [InlineData("8.8", "class_8_8")]
    [InlineData("a2-70", "stainless_a2_70")]
    [InlineData("grade_8", "grade_8")]
    public void Find_OfAMarkOrAName_IsTheGrade(string text, string name) => Assert.Equal(name, BoltGrades.Find(text)?.Name);

    [Fact]
    public void Find_OfAnUnknownGrade_IsNone() => Assert.Null(BoltGrades.Find("9.8"));

    private static Quantity Area(string thread, Quantity diameter, Quantity pitch) => Call.Of("stress_area", thread, diameter, pitch);
}
