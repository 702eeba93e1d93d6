using FsCheck.Xunit;
using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Logic;
using Xunit;

namespace ProcedureRules.Tests.Beliefs;

/// <summary>
/// The law that beliefs stand under: whatever the open facts turn out to be, what is sure holds, and what holds was possible. Cases are drawn
/// at random and reckoned out without the network.
/// </summary>
public class SoundnessTests
{
    private const int Cases = 12;

    [Property(MaxTest = 200)]
    public void Labels_InEveryCase_AreKept(int seed, byte size)
    {
        var random = new RandomWorld(seed, size % 9);
        var beliefs = random.World.Believe();
        for (var i = 0; i < Cases; i++)
        {
            var completion = new Completion(random, beliefs, new Random(HashCode.Combine(seed, i)));
            CheckRecords(beliefs, completion);
            CheckAtoms(beliefs, completion);
            CheckFacts(random, beliefs, completion);
        }
    }

    private static void CheckRecords(BeliefState beliefs, Completion completion)
    {
        foreach (var record in beliefs.Network.Records)
        {
            var holds = completion.Holds(record);
            for (var e = 0; e < record.Effects.Count; e++)
            {
                Assert.True(holds || beliefs.Required(record, e) != Assurance.Sure, $"{record}: sure, but not in a case");
                Assert.True(!holds || beliefs.Available(record, e) > Assurance.No, $"{record}: not possible, but holds in a case");
            }
        }
    }

    private static void CheckAtoms(BeliefState beliefs, Completion completion)
    {
        Atom[] atoms = [.. beliefs.Network.AtomsOf<Atom.Occurs>(), .. beliefs.Network.AtomsOf<Atom.Related>(), .. beliefs.Network.AtomsOf<Atom.Open>()];
        foreach (var atom in atoms)
        {
            Assert.True(completion.IsTrue(atom) || beliefs.TruthOf(atom) != Truth.Yes, $"{atom}: sure, but not in a case");
            Assert.True(!completion.IsTrue(atom) || beliefs.TruthOf(atom) != Truth.No, $"{atom}: not possible, but holds in a case");
        }
    }

    private static void CheckFacts(RandomWorld random, BeliefState beliefs, Completion completion)
    {
        foreach (var key in random.Facts.SelectMany(facts => facts))
        {
            var (value, rank) = completion.Merged(key);
            var believed = beliefs.Fact(key.Part, key.Fact);
            Assert.True(believed.Contains(value), $"{key}: {Show(believed)} does not hold {Show(value)}");
            Assert.True(beliefs.SourceOf(key) <= rank, $"{key}: ranks {beliefs.SourceOf(key)}, but {rank} in a case");
            if (!key.Fact.Type.IsQuantity) continue;
            var demanded = beliefs.Demanded(key.Part, key.Fact);
            Assert.True(demanded.Contains(completion.MergedDemand(key)), $"demanded({key}): {demanded} does not hold {completion.MergedDemand(key)}");
            var (least, most) = completion.Band(key);
            Assert.True(least > most || !beliefs.EmptyBands.Any(band => band.Key == key), $"{key}: the band is not empty in a case");
        }
    }

    internal static string Show(Value value) => value.Type.IsQuantity ? value.Quantity.ToString() : $"words {value.Words}";
}
