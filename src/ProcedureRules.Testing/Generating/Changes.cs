using ProcedureRules.Facts;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Testing.Generating;

/// <summary>Makes statements on a vehicle, in the words that <see cref="ProcedureSession.State(string)"/> reads.</summary>
public static class Changes
{
    /// <summary>A reading: a value of a fact of one of its parts; null where it has no fact to ask for.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="seed">What chance starts from.</param>
    public static string? Reading(GeneratedVehicle vehicle, int seed)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        return Reading(vehicle.Situation, new Random(seed));
    }

    /// <summary>A reading, or word that a part or relation is there or is not.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="seed">What chance starts from.</param>
    public static string? Any(GeneratedVehicle vehicle, int seed)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        var (situation, random) = (vehicle.Situation, new Random(seed));
        var parts = situation.PartStatements.Where(statement => statement.Part.Name != Vocabulary.VehicleKind && situation.Jobs.All(job => job.On != statement.Part)).ToList();
        var relations = situation.Relations;
        return random.Next(6) switch
        {
            0 when parts.Count > 0 => $"part {parts[random.Next(parts.Count)].Part.Name}={YesOrNo(random)}",
            1 when relations.Count > 0 && relations[random.Next(relations.Count)] is var one => $"{one.Relation.Name}({one.A.Name}, {one.B.Name})={YesOrNo(random)}",
            _ => Reading(situation, random),
        };
    }

    private static string? Reading(Situation situation, Random random)
    {
        var keys = situation.PartStatements.Where(statement => statement.Exists != Truth.No).Select(statement => statement.Part)
            .SelectMany(part => situation.Vocabulary.FactsOf(part.Kind).Where(VehicleMaker.Askable), (part, fact) => new FactKey(part, fact)).ToList();
        if (keys.Count == 0) return null;
        var key = keys[random.Next(keys.Count)];
        var value = ValueMaker.Make(key.Fact, random);
        var written = value.Type.IsQuantity
            ? value.Quantity.ToString(UnitSystem.Us)
            : string.Join(" | ", value.Type.Words.Where((_, word) => (value.Words >> word & 1) != 0));
        return $"{key}={written}";
    }

    private static string YesOrNo(Random random) => random.Next(2) == 0 ? "yes" : "no";
}
