using ProcedureRules.Facts;
using ProcedureRules.Quantities;

namespace ProcedureRules.Testing.Generating;

/// <summary>A vehicle with jobs on it that a generator made; written out it is a sheet to read, and to keep as a scenario.</summary>
/// <param name="Situation">All that is stated of it.</param>
public sealed record GeneratedVehicle(Situation Situation)
{
    /// <summary>Makes a vehicle that fits packs; the same seed makes the same one.</summary>
    /// <param name="engine">The packs.</param>
    /// <param name="seed">What chance starts from.</param>
    /// <param name="job">The job on it; any one where it is null.</param>
    public static GeneratedVehicle Make(ProcedureEngine engine, int seed, string? job = null)
    {
        ArgumentNullException.ThrowIfNull(engine);
        return new(new VehicleMaker(engine).Make(new Random(seed), job));
    }

    /// <summary>Smaller vehicles that are like it: with less stated, and with rounder values. The smallest come first.</summary>
    public IEnumerable<GeneratedVehicle> Smaller() => VehicleShrinker.Shrink(Situation).Select(smaller => new GeneratedVehicle(smaller));

    /// <summary>Its sheet, and the jobs, as YAML.</summary>
    public override string ToString() => SheetWriter.WriteVehicle(Situation, UnitSystem.Us)
        + string.Concat(Situation.Jobs.Select(job => $"# job: {job.Job.Name} on {job.On.Name}\n"));
}
