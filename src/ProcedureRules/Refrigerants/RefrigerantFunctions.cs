using ProcedureRules.Language;
using ProcedureRules.Quantities;

namespace ProcedureRules.Refrigerants;

/// <summary>The functions about refrigerants, vacuum and the air around that packs can call.</summary>
public static class RefrigerantFunctions
{
    private static readonly FunctionParameter Name = new("refrigerant", [.. Refrigerant.All.Select(one => one.Name)]);
    private static readonly FunctionParameter Temperature = new("temperature", Dimension.Temperature);
    private static readonly FunctionParameter Gauge = new("gauge", Dimension.GaugePressure);
    private static readonly FunctionParameter Absolute = new("absolute", Dimension.AbsolutePressure);
    private static readonly FunctionParameter Air = new("air", Dimension.AbsolutePressure);
    private static readonly string Equations = string.Join("; ", Refrigerant.All.Select(one => $"{one.Designation}: {one.Basis}"));

    /// <summary>All of them.</summary>
    public static IReadOnlyList<FunctionDefinition> All { get; } = [.. Saturation(), .. Pressures(), .. Vacuum(), .. Charge()];

    private static IEnumerable<FunctionDefinition> Saturation() =>
    [
        new()
        {
            Name = "saturation_pressure",
            Parameters = [Name, Temperature],
            Returns = Dimension.AbsolutePressure,
            Documentation = "the pressure at which a refrigerant boils at a temperature; unknown beyond its critical temperature or below its equation",
            Basis = Equations,
            Implementation = given => Refrigerant.Find(given.Word("refrigerant"))!.SaturationPressure(given[1]),
        },
        new()
        {
            Name = "saturation_temperature",
            Parameters = [Name, Absolute],
            Returns = Dimension.Temperature,
            Documentation = "the temperature at which a refrigerant boils at a pressure; unknown beyond its critical pressure or below its equation",
            Basis = Equations,
            Implementation = given => Refrigerant.Find(given.Word("refrigerant"))!.SaturationTemperature(given[1]),
        },
        new()
        {
            Name = "saturation_gauge",
            Parameters = [Name, Temperature, Air],
            Returns = Dimension.GaugePressure,
            Documentation = "what a gauge shows where liquid and vapour of a refrigerant stand together at a temperature, in the air pressure around",
            Basis = Equations,
            Implementation = given => GaugeReading.FromAbsolute(Refrigerant.Find(given.Word("refrigerant"))!.SaturationPressure(given[1]), given[2]),
        },
    ];

    private static IEnumerable<FunctionDefinition> Pressures() =>
    [
        new()
        {
            Name = "air_pressure",
            Parameters = [new("altitude", Dimension.Length)],
            Returns = Dimension.AbsolutePressure,
            Documentation = "the usual air pressure at an altitude, from 500 m below the sea to 11000 m above; unknown elsewhere",
            Basis = StandardAtmosphere.Basis,
            Implementation = given => StandardAtmosphere.AirPressure(given[0]),
        },
        new()
        {
            Name = "absolute_pressure",
            Parameters = [Gauge, Air],
            Returns = Dimension.AbsolutePressure,
            Documentation = "a gauge reading counted from empty space, in the air pressure around",
            Implementation = given => GaugeReading.ToAbsolute(given[0], given[1]),
        },
        new()
        {
            Name = "gauge_pressure",
            Parameters = [Absolute, Air],
            Returns = Dimension.GaugePressure,
            Documentation = "an absolute pressure as a gauge shows it, in the air pressure around",
            Implementation = given => GaugeReading.FromAbsolute(given[0], given[1]),
        },
        new()
        {
            Name = "deepest_vacuum",
            Parameters = [Air],
            Returns = Dimension.GaugePressure,
            Documentation = "what a gauge shows at a perfect vacuum, in the air pressure around; nothing can read deeper",
            Implementation = given => Quantity.Between(-given[0].High, -given[0].Low, Dimension.GaugePressure),
        },
    ];

    private static IEnumerable<FunctionDefinition> Vacuum() =>
    [
        new()
        {
            Name = "water_boiling_pressure",
            Parameters = [Temperature],
            Returns = Dimension.AbsolutePressure,
            Documentation = "the pressure below which water boils away at a temperature; below freezing, the pressure below which ice turns to vapour",
            Basis = Water.Basis,
            Implementation = given => Water.Pressure(given[0]),
        },
        new()
        {
            Name = "water_boiling_temperature",
            Parameters = [Absolute],
            Returns = Dimension.Temperature,
            Documentation = "the temperature at which water boils at a pressure; below 4588 micron water is ice, and this is the temperature at which it turns to vapour",
            Basis = Water.Basis,
            Implementation = given => Water.Temperature(given[0]),
        },
        new()
        {
            Name = "vacuum_rise",
            Parameters =
            [
                new("before", Dimension.AbsolutePressure), new("after", Dimension.AbsolutePressure),
                new("took", Dimension.Duration), new("over", Dimension.Duration),
            ],
            Returns = Dimension.PressureDifference,
            Documentation = "how far a vacuum rises in a time, at the pace at which it rose from one reading to another",
            Implementation = given => VacuumRise.Over(given[0], given[1], given[2], given[3]),
        },
        new()
        {
            Name = "vacuum_slowing",
            Parameters =
            [
                new("first", Dimension.AbsolutePressure), new("middle", Dimension.AbsolutePressure), new("last", Dimension.AbsolutePressure),
            ],
            Returns = Dimension.Number,
            Documentation = "of three readings at equal times, the second rise as a share of the first: near 1 air leaks in steadily, near 0 it levels off as water vapour does",
            Basis = "a leak into a vacuum deeper than half the air pressure is choked and so steady; vapour stops at its saturation pressure (common practice)",
            Implementation = given => VacuumRise.Slowing(given[0], given[1], given[2]),
        },
    ];

    private static IEnumerable<FunctionDefinition> Charge() =>
    [
        new()
        {
            Name = "r12_to_r134a_charge",
            Parameters = [new("r12_charge", Dimension.Mass)],
            Returns = Dimension.Mass,
            Documentation = "between what masses the R-134a charge of a converted R-12 system lies",
            Basis = RetrofitCharge.Basis,
            Implementation = given => RetrofitCharge.Band(given[0]),
        },
        new()
        {
            Name = "r12_to_r134a_start",
            Parameters = [new("r12_charge", Dimension.Mass)],
            Returns = Dimension.Mass,
            Documentation = "the mass of R-134a to start with in a converted R-12 system: the low end of the band, since adding is easy and an overcharge has to be recovered",
            Basis = RetrofitCharge.Basis,
            Implementation = given => RetrofitCharge.Start(given[0]),
        },
    ];
}
