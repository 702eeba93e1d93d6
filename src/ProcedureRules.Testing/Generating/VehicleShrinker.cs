using ProcedureRules.Facts;
using ProcedureRules.Packs;

namespace ProcedureRules.Testing.Generating;

/// <summary>Makes vehicles smaller step by step: half of what is stated goes at once, then less, down to each statement by itself, then values get rounder.</summary>
internal static class VehicleShrinker
{
    /// <summary>Smaller vehicles with the same jobs.</summary>
    public static IEnumerable<Situation> Shrink(Situation vehicle)
    {
        var needed = vehicle.Jobs.Select(job => job.On).Append(vehicle.Parts.First(part => part.Name == Vocabulary.VehicleKind)).ToHashSet();
        var stated = vehicle.PartStatements.Where(statement => statement.Source != Source.None && !needed.Contains(statement.Part)).Select(statement => statement.Part).ToList();
        // What goes with a part comes back where it is taken away alone.
        foreach (var fewer in Fewer(stated))
            if (Without(vehicle, fewer) is var smaller && Size(smaller) < Size(vehicle)) yield return smaller;
        foreach (var fewer in Fewer(vehicle.Observations)) yield return Again(vehicle with { Observations = [.. vehicle.Observations.Except(fewer)] });
        var relations = vehicle.Relations.Where(relation => relation.Source != Source.None).ToList();
        foreach (var fewer in Fewer(relations)) yield return Again(vehicle with { Relations = [.. vehicle.Relations.Except(fewer)] });
        foreach (var state in vehicle.States.Keys) yield return Again(vehicle with { States = vehicle.States.Where(other => other.Key != state).ToDictionary() });
        foreach (var observation in vehicle.Observations)
            foreach (var simpler in ValueMaker.Simpler(observation.Value))
                yield return Again(vehicle with { Observations = [.. vehicle.Observations.Select(other => ReferenceEquals(other, observation) ? observation with { Value = simpler } : other)] });
    }

    // What goes: both halves, then each quarter, down to one by one.
    private static IEnumerable<IReadOnlyCollection<T>> Fewer<T>(IReadOnlyList<T> all)
    {
        for (var size = (all.Count + 1) / 2; size > 0; size = size == 1 ? 0 : (size + 1) / 2)
            foreach (var gone in all.Chunk(size)) yield return gone;
    }

    private static Situation Without(Situation vehicle, IReadOnlyCollection<Part> parts) => Again(vehicle with
    {
        Parts = [.. vehicle.Parts.Except(parts)],
        PartStatements = [.. vehicle.PartStatements.Where(statement => !parts.Contains(statement.Part))],
    });

    private static int Size(Situation vehicle) => vehicle.Parts.Count + vehicle.Observations.Count + vehicle.Relations.Count + vehicle.States.Count;

    // What silence means is filled in anew.
    private static Situation Again(Situation vehicle) => SituationBuilder.From(vehicle).Build(vehicle.Title);
}
