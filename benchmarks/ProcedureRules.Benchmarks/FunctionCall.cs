using ProcedureRules.Language;
using ProcedureRules.Quantities;

namespace ProcedureRules.Benchmarks;

/// <summary>A call of each function that packs have, with arguments as a plan has them: not known to the last digit.</summary>
internal sealed class FunctionCall
{
    private static readonly string[] Written =
    [
        "turn_of_rise(1..1.5 in, 30..32 in)",
        "moves_into_gap(toward, 13..14 in, 19..20 in, 2..3 deg, 0..0.5 in)",
        "safe_rise(toward, 0.9..1 in, 13..14 in, 19..20 in, 30..32 in)",
        "centre_from_axle_loads(750..760 kg, 630..640 kg, 105 in)",
        "centre_height(760..762 kg, 729..730 kg, 1400 kg, 105 in, 24 in, 12 in)",
        "centre_without(1390..1400 kg, 47..48 in, 190..200 kg, 3..4 in)",
        "front_support_load(1390..1400 kg, 47..48 in, 190..200 kg, 3..4 in, 16 in, 84 in)",
        "rear_support_load(1390..1400 kg, 47..48 in, 190..200 kg, 3..4 in, 16 in, 84 in)",
        "tipping_reserve(47..48 in, 16 in, 84 in)",
        "push_to_unload_front(1390..1400 kg, 47..48 in, 3..4 in, 84 in)",
        "sling_leg_load(190..200 kg, 2, 60 deg)",
        "stress_area(inch, 3/8 in, 1/16 in)",
        "proof_stress(grade_5, 3/8 in)",
        "proof_load(class_8_8, 8 mm, 1.25 mm)",
        "nut_factor(zinc)",
        "chart_torque(grade_5, 3/8 in, 1/16 in, 0.15..0.20)",
        "saturation_pressure(r134a, 75..80 degF)",
        "saturation_temperature(r134a, 48..50 psia)",
        "saturation_gauge(r134a, 70..80 degF, 14..14.7 psia)",
        "air_pressure(4500..5000 ft)",
        "absolute_pressure(33..35 psi, 14..14.7 psia)",
        "gauge_pressure(500..600 micron, 14..14.7 psia)",
        "deepest_vacuum(14..14.7 psia)",
        "water_boiling_pressure(65..70 degF)",
        "water_boiling_temperature(500..5000 micron)",
        "vacuum_rise(500..510 micron, 700..710 micron, 5 min, 10 min)",
        "vacuum_slowing(500..510 micron, 900..910 micron, 1000..1010 micron)",
        "r12_to_r134a_charge(36..38 oz)",
        "r12_to_r134a_start(36..38 oz)",
    ];

    private readonly FunctionDefinition _function;
    private readonly FunctionArguments _arguments;

    private FunctionCall(FunctionDefinition function, FunctionArguments arguments) => (_function, _arguments) = (function, arguments);

    /// <summary>The names of the functions.</summary>
    public static IEnumerable<string> Names => ProcedureEngine.Functions.Added.Select(function => function.Name);

    /// <summary>The call of a function; a function that no call is written for, or a call that gives nothing, must not pass for a fast one.</summary>
    public static FunctionCall Of(string name)
    {
        var function = ProcedureEngine.Functions.Find(name)!;
        var text = Written.FirstOrDefault(one => one.StartsWith(name + "(", StringComparison.Ordinal))
            ?? throw new InvalidOperationException($"No call of '{name}' is written here.");
        var arguments = text[(name.Length + 1)..^1].Split(", ");
        var quantities = function.Parameters.Select((parameter, i) => parameter.Dimension is { } due ? Quantity.Read(arguments[i]).As(due) : default);
        var call = new FunctionCall(function, new FunctionArguments(function, [.. quantities], arguments));
        return call.Result().IsBounded ? call : throw new InvalidOperationException($"'{text}' gives nothing.");
    }

    /// <summary>What it gives.</summary>
    public Quantity Result() => _function.Implementation(_arguments);
}
