using FsCheck.Xunit;
using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Logic;
using Xunit;

namespace ProcedureRules.Tests.Beliefs;

/// <summary>Suppositions in any order and number give the labels of a network built anew; more knowledge only narrows.</summary>
public class SuppositionTests
{
    [Property(MaxTest = 100)]
    public void With_AnySequence_EqualsBuildingAnew(int seed, byte size)
    {
        var random = new RandomWorld(seed, size % 9);
        var dice = new Random(seed);
        var inputs = new RandomInputs(random, dice);
        var beliefs = random.World.Believe();
        for (var i = 0; i < 8; i++)
        {
            var suppositions = Enumerable.Range(0, dice.Next(3)).Select(_ => inputs.Any()).ToList();
            beliefs = beliefs.With(suppositions);
            AssertSame(inputs.BuildAnew(), beliefs);
        }
    }

    [Property(MaxTest = 40)]
    public void With_Nothing_IsTheSame(int seed, byte size)
    {
        var beliefs = new RandomWorld(seed, size % 9).World.Believe();
        AssertSame(beliefs, beliefs.With([]));
    }

    [Property(MaxTest = 40)]
    public void With_SomethingAndBack_LeavesTheStateItCameFromAlone(int seed, byte size)
    {
        var random = new RandomWorld(seed, size % 9);
        var inputs = new RandomInputs(random, new Random(seed));
        var beliefs = random.World.Believe();
        var before = random.World.Believe();
        for (var i = 0; i < 12; i++) _ = beliefs.With([inputs.Any()]);
        AssertSame(before, beliefs);
    }

    [Property(MaxTest = 100)]
    public void With_MoreKnowledge_OnlyNarrows(int seed, byte size)
    {
        var random = new RandomWorld(seed, size % 9);
        var inputs = new RandomInputs(random, new Random(seed));
        var beliefs = random.World.Believe();
        while (inputs.Refinement(beliefs) is { } supposition)
        {
            var next = beliefs.With([supposition]);
            AssertNarrower(beliefs, next, supposition);
            beliefs = next;
        }
    }

    [Fact]
    public async Task With_OnManyThreads_GivesWhatOneThreadGives()
    {
        var random = new RandomWorld(7, 8);
        var beliefs = random.World.Believe();
        var inputs = new RandomInputs(random, new Random(7));
        var suppositions = Enumerable.Range(0, 64).Select(_ => inputs.Any()).ToList();
        var expected = suppositions.ConvertAll(supposition => beliefs.With([supposition]));
        var actual = await Task.WhenAll(suppositions.Select(supposition =>
            Task.Run(() => beliefs.With([supposition]), TestContext.Current.CancellationToken)));
        foreach (var (a, b) in expected.Zip(actual)) AssertSame(a, b);
    }

    private static void AssertSame(BeliefState expected, BeliefState actual)
    {
        foreach (var (record, other) in expected.Network.Records.Zip(actual.Network.Records))
        {
            for (var e = 0; e < record.Effects.Count; e++)
            {
                Assert.Equal(expected.Required(record, e), actual.Required(other, e));
                Assert.Equal(expected.Available(record, e), actual.Available(other, e));
            }
        }

        foreach (var atom in expected.Network.AtomsOf<Atom.Occurs>().Concat<Atom>(expected.Network.AtomsOf<Atom.Related>()))
            Assert.Equal((expected.Required(atom), expected.Available(atom)), (actual.Required(atom), actual.Available(atom)));
        foreach (var key in FactsOf(expected))
        {
            Assert.Equal(expected.Fact(key.Part, key.Fact), actual.Fact(key.Part, key.Fact));
            Assert.Equal(expected.SourceOf(key), actual.SourceOf(key));
            Assert.Equal(expected.Demands(key), actual.Demands(key));
        }

        Assert.Equal(expected.Conflicts.Select(conflict => conflict.About), actual.Conflicts.Select(conflict => conflict.About));
        Assert.Equal(expected.EmptyBands.Select(band => band.Key), actual.EmptyBands.Select(band => band.Key));
    }

    private static void AssertNarrower(BeliefState before, BeliefState after, Supposition supposition)
    {
        foreach (var record in before.Network.Records)
        {
            for (var e = 0; e < record.Effects.Count; e++)
            {
                Assert.True(before.Required(record, e) != Assurance.Sure || after.Required(record, e) == Assurance.Sure, $"{record}: sure no more by {supposition}");
                Assert.True(before.Available(record, e) != Assurance.No || after.Available(record, e) == Assurance.No, $"{record}: possible by {supposition}");
            }
        }

        foreach (var atom in before.Network.AtomsOf<Atom.Occurs>().Concat<Atom>(before.Network.AtomsOf<Atom.Related>()))
            Assert.True(before.TruthOf(atom) == Truth.Unknown || before.TruthOf(atom) == after.TruthOf(atom), $"{atom}: turned by {supposition}");
        foreach (var key in FactsOf(before))
        {
            var (wide, narrow) = (before.Fact(key.Part, key.Fact), after.Fact(key.Part, key.Fact));
            Assert.True(wide.Contains(narrow), $"{key}: {SoundnessTests.Show(wide)} became {SoundnessTests.Show(narrow)} by {supposition}");
            if (key.Fact.Type.IsQuantity)
                Assert.True(before.Demanded(key.Part, key.Fact).Contains(after.Demanded(key.Part, key.Fact)), $"demanded({key}): wider by {supposition}");
        }
    }

    private static IEnumerable<FactKey> FactsOf(BeliefState beliefs) =>
        from part in beliefs.Network.Result.Situation.Parts
        from fact in beliefs.Network.Result.Situation.Vocabulary.Facts
        where part.Kind.IsA(fact.Kind)
        select new FactKey(part, fact);
}
