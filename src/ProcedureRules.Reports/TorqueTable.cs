using System.Globalization;
using ProcedureRules.Mechanics;
using ProcedureRules.Quantities;

namespace ProcedureRules.Reports;

/// <summary>What a general torque chart says of a bolt, by its surface, with the cautions that belong to it.</summary>
public static class TorqueTable
{
    private static readonly Unit PoundFoot = UnitTable.Find("lb.ft")!;
    private static readonly Unit NewtonMetre = UnitTable.Find("N.m")!;

    private static readonly string[] Cautions =
    [
        "GENERAL CHART, not the figure of any joint: the maker's figure goes first. Use it to judge a stated figure, not to replace one.",
        "Never for bolts that are used once or tightened by angle, nor for crank hub, wheel, airbag, brake or steering.",
        "For steel clamped on steel. A thread in aluminium, a soft gasket or a thin flange bears less.",
        "Lubricated as the row says: oil on a bolt whose torque is for a dry one stretches it too far.",
    ];

    /// <summary>The table: a row for each surface whose nut factor is published, or one for a nut factor that is known.</summary>
    public static FigureTable Of(TorqueChart chart, Quantity? nutFactor = null)
    {
        ArgumentNullException.ThrowIfNull(chart);
        var rows = nutFactor is { } known
            ? [Row(chart, known, null)]
            : NutFactors.Surfaces.Where(surface => (surface == "stainless") == chart.Grade.IsStainless)
                .Select(surface => Row(chart, NutFactors.Find(surface)!.Value, surface.Replace('_', ' '))).ToList();
        var (area, proof, preload) = (chart.StressArea, chart.ProofLoad, chart.Preload);
        return new FigureTable(
            $"{chart.Thread.Designation}, {chart.Grade.Text}: torque of a general chart",
            [new("K", 2), new("Kmax", 2), new("lbft", 1), new("lbftMax", 1), new("Nm", 1), new("NmMax", 1)],
            rows,
            [
                $"Stress area {Both(area)}, proof load {Both(proof)}, tightened to 75 % of it: {Both(preload)}.",
                .. Cautions,
            ],
            [
                chart.Thread.IsMetric ? "stress area: ISO 898-1" : "stress area: ASME B1.1",
                chart.Grade.IsStainless ? $"{chart.Grade.Standard}: 0.2 % proof strength, from memory" : $"proof stress: {chart.Grade.Standard}",
                nutFactor is null ? "torque = K x diameter x pull, with published ranges of K" : "torque = K x diameter x pull, with the K that was given",
            ]);
    }

    private static FigureRow Row(TorqueChart chart, Quantity factor, string? surface)
    {
        var torque = chart.Torque(factor);
        var (feet, metres) = (torque.In(PoundFoot), torque.In(NewtonMetre));
        return new FigureRow([factor.Low, factor.High, feet.Low, feet.High, metres.Low, metres.High], surface);
    }

    private static string Both(Quantity value) =>
        string.Create(CultureInfo.InvariantCulture, $"{value.ToDisplay(UnitSystem.Us)} ({value.ToDisplay(UnitSystem.Si)})");
}
