using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Testing.Mutating;
using ProcedureRules.Tests.Engine;
using Xunit;
using Record = ProcedureRules.Inference.Record;

namespace ProcedureRules.Tests.Inference;

/// <summary>A rule matched by itself, on what all rules concluded, matches what it matched among them.</summary>
public sealed class RuleMatchesTests
{
    // The second has states that rules ask for at the start.
    [Theory]
    [InlineData("oil-pan")]
    [InlineData("compressor-begun")]
    public void Records_OfEachRuleByItself_AreThoseAmongAll(string order)
    {
        var result = Shipped.Plan(order).Beliefs.Network.Result;
        var among = result.Records.Where(record => record.Mechanism == Mechanism.Rule).ToLookup(record => record.Rule!, Said, ReferenceEqualityComparer.Instance);
        Assert.NotEmpty(among);

        Assert.All(result.Rules.Rules, rule =>
            Assert.Equal(among[rule].Order(StringComparer.Ordinal), Matches(rule, result, 1000)!.Select(Said).Order(StringComparer.Ordinal)));
    }

    [Fact]
    public void Records_MoreThanTheBound_AreNone()
    {
        var result = Shipped.Plan("oil-pan").Beliefs.Network.Result;
        var often = result.Records.Where(record => record.Mechanism == Mechanism.Rule).GroupBy(record => record.Rule!).First(rule => rule.Count() > 1);

        Assert.Null(Matches(often.Key, result, often.Count() - 1));
        Assert.NotNull(Matches(often.Key, result, often.Count()));
    }

    private static IReadOnlyList<Record>? Matches(CompiledRule rule, InferenceResult result, int budget) =>
        RuleMatches.Of(RuleCopies.Only(result.Rules, [rule]), result, budget, TestContext.Current.CancellationToken);

    private static string Said(Record record) =>
        $"{record.Binding}: {string.Join(", ", record.Premises)} => {string.Join(", ", record.Effects.Select(effect => $"{effect.Atom} {effect.Fact}"))}";
}
