using ProcedureRules.Quantities;

namespace ProcedureRules.Mechanics;

/// <summary>What a bolt bears and what torque pulls it so far.</summary>
internal static class Fastening
{
    /// <summary>The share of the proof load that a general chart pulls a bolt to.</summary>
    public static readonly Quantity ChartShare = Quantity.Number(0.75);

    // The standards cut the circle constant nowhere; the coefficients are theirs.
    private static readonly Quantity QuarterCircle = Quantity.Number(Math.PI / 4);
    private static readonly Quantity InchDepth = Quantity.Number(0.9743);
    private static readonly Quantity MetricDepth = Quantity.Number(0.9382);

    /// <summary>The tensile stress area: ASME B1.1 for inch threads, ISO 898-1 for metric ones.</summary>
    public static Quantity StressArea(bool isMetric, Quantity diameter, Quantity pitch)
    {
        var depth = isMetric ? MetricDepth : InchDepth;
        if (!diameter.IsBounded || pitch.Low <= 0 || diameter.Low <= (depth * pitch).High) return Quantity.Anything(Dimension.Area);
        var core = diameter - (depth * pitch);
        return QuarterCircle * core * core;
    }

    public static Quantity ProofLoad(BoltGrade grade, Quantity diameter, Quantity pitch) =>
        Over(grade, diameter, (piece, proof) => proof * StressArea(grade.IsMetric, piece, pitch), Dimension.Force);

    /// <summary>What a general chart gives: the torque that pulls the bolt to three quarters of its proof load.</summary>
    public static Quantity ChartTorque(BoltGrade grade, Quantity diameter, Quantity pitch, Quantity factor) =>
        factor.IsBounded && factor.Low > 0
            ? Over(grade, diameter, (piece, proof) => factor * piece * (ChartShare * (proof * StressArea(grade.IsMetric, piece, pitch))), Dimension.Torque)
            : Quantity.Anything(Dimension.Torque);

    // Torque and load rise with the diameter within a range of the standard, so multiplying the bounds is exact there.
    private static Quantity Over(BoltGrade grade, Quantity diameter, Func<Quantity, Quantity, Quantity> formula, Dimension dimension)
    {
        Quantity? all = null;
        foreach (var (piece, proof) in grade.Pieces(diameter))
        {
            var value = formula(piece, proof);
            all = all is { } known ? Quantity.Hull(known, value) : value;
        }

        return all ?? Quantity.Anything(dimension);
    }
}
