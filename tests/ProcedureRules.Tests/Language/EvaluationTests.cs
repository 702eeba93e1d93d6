using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Quantities;
using Xunit;
using static ProcedureRules.Tests.Language.GivenLanguage;

namespace ProcedureRules.Tests.Language;

/// <summary>What expressions come to under beliefs.</summary>
public class EvaluationTests
{
    /// <summary>Strong Kleene logic (S. C. Kleene, Introduction to Metamathematics, 1952, section 64), through the whole compiler.</summary>
    [Theory]
    [InlineData("yes", "yes", "yes", "yes")]
    [InlineData("yes", "no", "no", "yes")]
    [InlineData("yes", "no|yes", "unknown", "yes")]
    [InlineData("no", "no", "no", "no")]
    [InlineData("no", "no|yes", "no", "unknown")]
    [InlineData("no|yes", "no|yes", "unknown", "unknown")]
    [InlineData("no|yes", "yes", "unknown", "yes")]
    [InlineData("no|yes", "no", "no", "unknown")]
    public void Connectives_OverAllTruths_AreKleenes(string a, string b, string and, string or)
    {
        (string, string)[] facts = [("oil_pan.dented", a), ("fan_shroud.fixed", b)];
        Assert.Equal(and, Truth("oil_pan.dented and fan_shroud.fixed", facts));
        Assert.Equal(or, Truth("oil_pan.dented or fan_shroud.fixed", facts));
        Assert.Equal(and, Truth("not (not oil_pan.dented or not fan_shroud.fixed)", facts));
    }

    [Theory]
    [InlineData("oil_pan.drop < 2 in", "1 in", "yes")]
    [InlineData("oil_pan.drop < 2 in", "2 in", "no")]
    [InlineData("oil_pan.drop <= 2 in", "2 in", "yes")]
    [InlineData("oil_pan.drop < 2 in", "1..3 in", "unknown")]
    [InlineData("oil_pan.drop > 2 in", "1..3 in", "unknown")]
    [InlineData("oil_pan.drop >= 2 in", "2..3 in", "yes")]
    [InlineData("oil_pan.drop is 2 in", "2 in", "yes")]
    [InlineData("oil_pan.drop is not 2 in", "2 in", "no")]
    [InlineData("oil_pan.drop is 1..3 in", "2 in", "yes")]
    [InlineData("oil_pan.drop is 1..3 in", "1..3 in", "yes")]
    [InlineData("oil_pan.drop is 1..3 in", "2..4 in", "unknown")]
    [InlineData("oil_pan.drop is 1..3 in", "4..5 in", "no")]
    [InlineData("oil_pan.drop is not 1..3 in", "4..5 in", "yes")]
    [InlineData("oil_pan.drop + 1 in < 2.5 in", "1 in", "yes")]
    [InlineData("2 * oil_pan.drop - 1 in is 1 in", "1 in", "yes")]
    [InlineData("oil_pan.drop / 4 in > 0.25", "2 in", "yes")]
    [InlineData("-oil_pan.drop < -1 in", "2 in", "yes")]
    [InlineData("abs(oil_pan.drop - 3 in) <= 1 in", "2 in", "yes")]
    [InlineData("min(oil_pan.drop, 3 in, 4 in) is 2 in", "2 in", "yes")]
    [InlineData("max(oil_pan.drop, 3 in) is 3 in", "2 in", "yes")]
    [InlineData("if(oil_pan.drop > 1 in, 5 in, 6 in) is 5 in", "2 in", "yes")]
    [InlineData("if(oil_pan.drop > 1 in, 5 in, 6 in) is 5..6 in", "0..2 in", "yes")]
    [InlineData("if(oil_pan.drop > 1 in, 5 in, 6 in) is 5 in", "0..2 in", "unknown")]
    [InlineData("if(oil_pan.drop > 1 in, oil_pan.drop < 3 in, oil_pan.drop < 4 in)", "0..2 in", "yes")]
    public void Quantities_Compared_AreUnknownWhereTheyOverlap(string expression, string drop, string expected) =>
        Assert.Equal(expected, Truth(expression, ("oil_pan.drop", drop)));

    [Theory]
    [InlineData("fan_shroud.pieces is one_piece", "one_piece", "yes")]
    [InlineData("fan_shroud.pieces is one_piece", "two_piece", "no")]
    [InlineData("fan_shroud.pieces is one_piece", "one_piece|two_piece", "unknown")]
    [InlineData("fan_shroud.pieces is not one_piece", "two_piece|none", "yes")]
    [InlineData("fan_shroud.pieces is_not [one_piece, none]", "one_piece|none", "no")]
    [InlineData("fan_shroud.pieces is [one_piece, two_piece]", "one_piece|two_piece", "yes")]
    [InlineData("fan_shroud.pieces is fan_shroud.spare", "one_piece", "unknown")]
    [InlineData("if(fan_shroud.pieces is none, two_piece, fan_shroud.pieces) is one_piece", "one_piece", null)]
    public void Words_Compared_AreUnknownWhereSomeFit(string expression, string pieces, string? expected)
    {
        if (expected is not null) Assert.Equal(expected, Truth(expression, ("fan_shroud.pieces", pieces)));
        else Assert.Contains("'two_piece' is a word of a fact", Complaints("", $"\"{expression}\"", "stop: x"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("one_piece", "one_piece", "yes")]
    [InlineData("one_piece", "two_piece|none", "no")]
    [InlineData("one_piece|none", "one_piece|none", "unknown")]
    public void Words_OfTwoFacts_AreTheSameOnlyWhereBothAreKnown(string pieces, string spare, string expected) =>
        Assert.Equal(expected, Truth("fan_shroud.pieces is fan_shroud.spare", ("fan_shroud.pieces", pieces), ("fan_shroud.spare", spare)));

    [Theory]
    [InlineData(ProcedureRules.Logic.Truth.Yes, "yes", "no")]
    [InlineData(ProcedureRules.Logic.Truth.No, "no", "yes")]
    [InlineData(ProcedureRules.Logic.Truth.Unknown, "unknown", "unknown")]
    public void Relation_InsideAnExpression_IsReadByKleene(Truth held, string expected, string negated)
    {
        Assert.Equal(expected, Truth("covers(dust_cover, oil_pan) or no", beliefs => beliefs.Relations[("covers", "dust_cover", "oil_pan")] = held));
        Assert.Equal(negated, Truth("not covers(dust_cover, oil_pan)", beliefs => beliefs.Relations[("covers", "dust_cover", "oil_pan")] = held));
        Assert.Equal(negated, Truth("covers(dust_cover, oil_pan) is no", beliefs => beliefs.Relations[("covers", "dust_cover", "oil_pan")] = held));
    }

    [Theory]
    [InlineData(ProcedureRules.Logic.Truth.Yes, "yes")]
    [InlineData(ProcedureRules.Logic.Truth.No, "no")]
    [InlineData(ProcedureRules.Logic.Truth.Unknown, "unknown")]
    public void Any_OfAKind_IsWhetherOneExists(Truth exists, string expected) =>
        Assert.Equal(expected, Truth("any(oil_cooler)", beliefs => beliefs.Parts["oil_cooler"] = exists));

    [Fact]
    public void Any_OfAKindWithoutParts_IsNo() => Assert.Equal("no", Truth("any(oil_cooler)", _ => { }));

    [Theory]
    [InlineData("demanded(engine.rise) >= 2 in")]
    [InlineData("engine.rise >= 2 in")]
    public void Demanded_OfAFact_IsItsBand(string expression)
    {
        Assert.Equal("yes", Truth(expression, beliefs => beliefs.Demands["rise"] = Quantity.Read("2..3 in")));
        Assert.Equal("unknown", Truth(expression, _ => { }));
    }

    [Fact]
    public void Test_OfARule_TellsWhatItReads()
    {
        var (rules, _) = Compile(RuleText("", "\"oil_pan.drop < demanded(engine.rise) and not covers(dust_cover, oil_pan) or any(oil_cooler)\"", "stop: x"));
        var rule = rules.Rules[0];
        var binding = SupposedBeliefs.Bind(rules, rule);
        var cooler = new Part("oil_cooler", rules.Vocabulary.Kinds["oil_cooler"]);
        var reads = rule.Tests[0].Reads(binding, _ => [cooler]).Select(read => read switch
        {
            Reading.OfFact fact => fact.Key.ToString(),
            Reading.OfDemand demand => $"demanded({demand.Key})",
            Reading.OfRelation relation => $"{relation.Relation}({relation.A}, {relation.B})",
            Reading.OfPart part => $"exists({part.Part})",
            _ => "",
        });
        Assert.Equal(["oil_pan.drop", "demanded(engine.rise)", "covers(dust_cover, oil_pan)", "exists(oil_cooler)"], reads);
    }

    [Theory]
    [InlineData("oil_pan.drop < 2 in", "oil_pan.drop 2 in")]
    [InlineData("2 in < oil_pan.drop", "oil_pan.drop 2 in")]
    [InlineData("oil_pan.drop is 1..2 in", "oil_pan.drop 1 in, oil_pan.drop 2 in")]
    [InlineData("oil_pan.drop < oil_pan.needed", "oil_pan.drop 0..12 in, oil_pan.needed 0..12 in")]
    [InlineData("oil_pan.drop - 1 in < oil_pan.drop", "oil_pan.drop")]
    [InlineData("not (oil_pan.drop < 2 in or oil_pan.gap > 0.5 in)", "oil_pan.drop 2 in, oil_pan.gap 0.5 in")]
    public void Test_OfARule_TellsWhereItsTruthTurns(string expression, string expected)
    {
        var (rules, _) = Compile(RuleText("", $"\"{expression}\"", "stop: x"));
        var rule = rules.Rules[0];
        var thresholds = rule.Tests[0].Thresholds!(SupposedBeliefs.Bind(rules, rule), new SupposedBeliefs());
        Assert.Equal(
            expected.Contains(' ', StringComparison.Ordinal) ? expected : "",
            string.Join(", ", thresholds.Select(threshold => $"{threshold.Key} {threshold.Threshold.ToDisplay(UnitSystem.Us)}")));
    }

    private static string Truth(string expression, params (string Path, string Value)[] facts)
    {
        var (rules, bag) = Compile(RuleText("", $"\"{expression}\"", "stop: x"));
        Assert.False(bag.HasErrors, bag.ToSnippets());
        var beliefs = facts.Aggregate(new SupposedBeliefs(), (all, fact) => all.With(rules.Vocabulary, fact.Path, fact.Value));
        return Truth(rules, beliefs);
    }

    private static string Truth(string expression, Action<SupposedBeliefs> suppose)
    {
        var (rules, bag) = Compile(RuleText("", $"\"{expression}\"", "stop: x"));
        Assert.False(bag.HasErrors, bag.ToSnippets());
        var beliefs = new SupposedBeliefs();
        suppose(beliefs);
        return Truth(rules, beliefs);
    }

    private static string Truth(RuleBase rules, SupposedBeliefs beliefs)
    {
        var rule = rules.Rules[0];
        return Assert.Single(rule.Tests).Evaluate(beliefs, SupposedBeliefs.Bind(rules, rule)).ToString().ToLowerInvariant();
    }
}
