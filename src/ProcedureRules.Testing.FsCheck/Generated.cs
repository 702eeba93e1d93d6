using FsCheck;
using FsCheck.Fluent;
using ProcedureRules.Testing.Generating;

namespace ProcedureRules.Testing.FsCheck;

/// <summary>FsCheck arbitraries for vehicles, what is said of them, and packs. A counterexample shrinks, and prints as YAML.</summary>
public static class Generated
{
    private const int MostStatements = 6;

    /// <summary>Vehicles that fit packs, with one job on each.</summary>
    /// <param name="engine">The packs.</param>
    /// <param name="job">The job; any one where it is null.</param>
    public static Arbitrary<GeneratedVehicle> Vehicles(ProcedureEngine engine, string? job = null)
    {
        ArgumentNullException.ThrowIfNull(engine);
        return Arb.From(Seeds.Select(seed => GeneratedVehicle.Make(engine, seed, job)), vehicle => vehicle.Smaller());
    }

    /// <summary>Readings on a vehicle, in the words that <see cref="ProcedureSession.State(string)"/> takes; it shrinks to fewer.</summary>
    /// <param name="vehicle">The vehicle.</param>
    public static Arbitrary<IReadOnlyList<string>> Readings(GeneratedVehicle vehicle) => Statements(seed => Changes.Reading(vehicle, seed));

    /// <summary>Readings, and word that parts and relations are there or are not; it shrinks to fewer.</summary>
    /// <param name="vehicle">The vehicle.</param>
    public static Arbitrary<IReadOnlyList<string>> AnyChanges(GeneratedVehicle vehicle) => Statements(seed => Changes.Any(vehicle, seed));

    /// <summary>Small packs without mistakes: kinds that come off and go back, facts, rules that need and warn, a job; it shrinks to fewer of each.</summary>
    public static Arbitrary<GeneratedPack> Packs() => Arb.From(Seeds.Select(GeneratedPack.Make), pack => pack.Smaller());

    private static Gen<int> Seeds => Gen.Choose(0, int.MaxValue - 1);

    private static Arbitrary<IReadOnlyList<string>> Statements(Func<int, string?> make) => Arb.From(
        from count in Gen.Choose(1, MostStatements)
        from seeds in Gen.ListOf(Seeds, count)
        select (IReadOnlyList<string>)[.. seeds.Select(make).OfType<string>()],
        statements => Enumerable.Range(0, statements.Count).Select(gone => (IReadOnlyList<string>)[.. statements.Where((_, index) => index != gone)]));
}
