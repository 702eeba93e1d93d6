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

    // What a rule matches with one condition less is put among what is known, or all is inferred anew: it comes to the same.
    [Theory]
    [InlineData("oil-pan")]
    [InlineData("compressor-begun")]
    public void Rematch_OfARuleThatMatchesMore_IsWhatAllRulesConclude(string order)
    {
        var result = Shipped.Plan(order).Beliefs.Network.Result;
        var atoms = new StandingAtoms(result);
        // Every condition of some rules: inference from nothing takes its time.
        var edits = result.Rules.Rules.Where((rule, i) => i % 37 == 0 && rule.Patterns.Count > 1).SelectMany(rule => rule.Patterns.Select(pattern => (rule, pattern))).ToList();
        var (more, known) = (0, 0);

        foreach (var (rule, pattern) in edits)
        {
            var changed = RuleCopies.WithoutPattern(rule, pattern);
            var rematch = new Rematch(result.Rules, [(rule, changed)]);
            var matches = rematch.Matches(atoms, 5000, TestContext.Current.CancellationToken);
            var inferred = new InferenceSession(RuleCopies.With(result.Rules, [(rule, changed)])).Infer(result.Situation, 5000, TestContext.Current.CancellationToken);

            var got = rematch.Infer(atoms, matches, 5000, TestContext.Current.CancellationToken);

            Assert.Equal(inferred.Records.Select(Said), got.Records.Select(Said));
            if (got.Records.Count > result.Records.Count) more++;
            if (matches is not null && matches.All(record => record.Effects.All(effect => effect.Atom is null || atoms.Contains(effect.Atom)))) known++;
        }

        Assert.True(more > 5 && known > 5 && known < edits.Count, $"{edits.Count} edits: {more} match more, {known} conclude nothing new");
    }

    private static IReadOnlyList<Record>? Matches(CompiledRule rule, InferenceResult result, int budget) =>
        RuleMatches.Of(RuleCopies.Only(result.Rules, [rule]), new StandingAtoms(result), budget, TestContext.Current.CancellationToken);

    private static string Said(Record record) =>
        $"{record.Binding}: {string.Join(", ", record.Premises)} => {string.Join(", ", record.Effects.Select(effect => $"{effect.Atom} {effect.Fact}"))}";
}
