using FsCheck.Xunit;
using ProcedureRules.Inference;
using Xunit;

namespace ProcedureRules.Tests.Inference;

public sealed class InferenceOracleTests
{
    [Property(MaxTest = 400)]
    public void Infer_RandomWorld_GivesWhatNestedLoopsGive(byte[] rules, byte[] start)
    {
        var world = new RandomWorld(rules, start);
        var situation = world.Now();
        var result = new InferenceSession(world.Rules).Infer(situation);
        var expected = new NaiveInference(world.Rules, situation).Lines;
        Assert.Equal(expected.Order(StringComparer.Ordinal), Described.Records(result).Order(StringComparer.Ordinal));
    }

    [Property(MaxTest = 40)]
    public void Infer_RandomWorld_FindsTheInstancesThatTheStockNetworkFinds(byte[] rules, byte[] start)
    {
        var world = new RandomWorld(rules, start, hasRings: true);
        var situation = world.Now();
        // States on arrival are no facts of the stock network; rules that ask for them are left to the other oracle.
        var comparable = world.Rules.Rules.Where(rule => rule.AtStart.Count == 0 && rule.Variables.Count > 0).ToList();
        var stock = new StockNetwork(comparable, new NaiveInference(world.Rules, situation).FinalFacts);
        var found = new InferenceSession(world.Rules).Infer(situation).Records
            .Where(record => record.Mechanism == Mechanism.Rule && comparable.Contains(record.Rule!))
            .Select(record => StockNetwork.Describe(record.Rule!, record.Binding));
        Assert.Equal(stock.Instances.Order(StringComparer.Ordinal), found.Order(StringComparer.Ordinal));
    }

    [Property(MaxTest = 300)]
    public void Update_AnySequenceOfChanges_GivesWhatAFreshSessionGives(byte[] rules, byte[] start, byte[] changes) =>
        UpdateEqualsFresh(new RandomWorld(rules, start), changes);

    [Property(MaxTest = 200)]
    public void Update_AnySequenceOfChangesWithRings_GivesWhatAFreshSessionGives(byte[] rules, byte[] start, byte[] changes) =>
        UpdateEqualsFresh(new RandomWorld(rules, start, hasRings: true), changes);

    [Property(MaxTest = 100)]
    public void Infer_PartsInAnotherOrder_GivesTheSameRecordsInTheSameOrder(byte[] rules, byte[] start)
    {
        var world = new RandomWorld(rules, start);
        var forwards = new InferenceSession(world.Rules).Infer(world.Now());
        var backwards = new InferenceSession(world.Rules).Infer(world.Now(parts => parts.Reverse()));
        Assert.Equal(Described.Records(forwards), Described.Records(backwards));
    }

    private static void UpdateEqualsFresh(RandomWorld world, byte[] changes)
    {
        var session = new InferenceSession(world.Rules);
        session.Update(world.Now());
        var dice = new Dice(changes);
        while (!dice.IsSpent)
        {
            for (var i = dice.Throw(3); i >= 0; i--) world.Change(dice);
            var situation = world.Now();
            var updated = session.Update(situation);
            var fresh = new InferenceSession(world.Rules).Infer(situation);
            Assert.Equal(Described.Records(fresh), Described.Records(updated));
        }
    }
}
