using ProcedureRules.Language;
using ProcedureRules.Quantities;

namespace ProcedureRules.Mechanics;

/// <summary>Where a vehicle's weight lies, what its supports carry, and what a jack or a sling does.</summary>
internal static class BalanceFunctions
{
    private const string Statics = "statics: moments about a support";

    private static readonly FunctionParameter Mass = new("mass", Dimension.Mass);
    private static readonly FunctionParameter Centre = new("centre", Dimension.Length);
    private static readonly FunctionParameter Taken = new("taken", Dimension.Mass);
    private static readonly FunctionParameter TakenAt = new("taken_at", Dimension.Length);
    private static readonly FunctionParameter FrontAt = new("front_at", Dimension.Length);
    private static readonly FunctionParameter RearAt = new("rear_at", Dimension.Length);
    private static readonly FunctionParameter Wheelbase = new("wheelbase", Dimension.Length);

    public static IReadOnlyList<FunctionDefinition> All { get; } =
    [
        new()
        {
            Name = "centre_from_axle_loads",
            Parameters = [new("front", Dimension.Mass), new("rear", Dimension.Mass), Wheelbase],
            Returns = Dimension.Length,
            Documentation = "how far behind the front axle the centre of gravity lies",
            Basis = Statics,
            Implementation = given => Balance.CentreFromAxleLoads(given["front"], given["rear"], given["wheelbase"]),
        },
        new()
        {
            Name = "centre_height",
            Parameters = [new("front_level", Dimension.Mass), new("front_raised", Dimension.Mass), Mass, Wheelbase, new("raised", Dimension.Length), new("wheel_radius", Dimension.Length)],
            Returns = Dimension.Length,
            Documentation = "how high the centre of gravity lies, from the load on the front axle standing level and with the front wheels raised so far",
            Basis = Statics + "; the tilt method of vehicle dynamics texts",
            Implementation = given => Balance.CentreHeight(given["front_level"], given["front_raised"], given["mass"], given["wheelbase"], given["raised"], given["wheel_radius"]),
        },
        new()
        {
            Name = "centre_without",
            Parameters = [Mass, Centre, Taken, TakenAt],
            Returns = Dimension.Length,
            Documentation = "where the centre of gravity lies once something is taken off, or carried by a jack, at its place; all places from one point backwards",
            Basis = Statics,
            Implementation = given => Balance.CentreWithout(given["mass"], given["centre"], given["taken"], given["taken_at"]),
        },
        new()
        {
            Name = "front_support_load",
            Parameters = [Mass, Centre, Taken, TakenAt, FrontAt, RearAt],
            Returns = Dimension.Mass,
            Documentation = "what the front supports carry with something taken off, or carried by a jack, at its place; below nothing: the vehicle tips backwards",
            Basis = Statics,
            Implementation = given => Balance.FrontLoad(given["mass"], given["centre"], given["taken"], given["taken_at"], given["front_at"], given["rear_at"]),
        },
        new()
        {
            Name = "rear_support_load",
            Parameters = [Mass, Centre, Taken, TakenAt, FrontAt, RearAt],
            Returns = Dimension.Mass,
            Documentation = "what the rear supports carry with something taken off, or carried by a jack, at its place; below nothing: the vehicle tips forwards",
            Basis = Statics,
            Implementation = given => Balance.RearLoad(given["mass"], given["centre"], given["taken"], given["taken_at"], given["front_at"], given["rear_at"]),
        },
        new()
        {
            Name = "tipping_reserve",
            Parameters = [Centre, FrontAt, RearAt],
            Returns = Dimension.Length,
            Documentation = "how far the centre of gravity lies within the supports; below nothing: outside them",
            Basis = Statics,
            Implementation = given => Balance.Reserve(given["centre"], given["front_at"], given["rear_at"]),
        },
        new()
        {
            Name = "push_to_unload_front",
            Parameters = [Mass, Centre, new("push_at", Dimension.Length), RearAt],
            Returns = Dimension.Mass,
            Documentation = "the push of a jack, as a mass it carries, that takes all load off the front supports",
            Basis = Statics,
            Implementation = given => Balance.PushToUnloadFront(given["mass"], given["centre"], given["push_at"], given["rear_at"]),
        },
        new()
        {
            Name = "sling_leg_load",
            Parameters = [new("load", Dimension.Mass), new("legs", Dimension.Count), new("angle", Dimension.Angle)],
            Returns = Dimension.Mass,
            Documentation = "what each of the legs of a chain or sling carries, spread evenly, at their angle from level",
            Basis = Statics,
            Implementation = given => Balance.SlingLegLoad(given["load"], given["legs"], given["angle"]),
        },
    ];
}
