using ProcedureRules.Diagnostics;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Quantities;
using Xunit;
using static ProcedureRules.Tests.Language.GivenLanguage;

namespace ProcedureRules.Tests.Language;

public class AggregateTests
{
    [Theory]
    [InlineData("count(oil_pan) is 2..3", Truth.Yes)]
    [InlineData("count(oil_pan) >= 3", Truth.Unknown)]
    [InlineData("count(oil_pan, oil_pan.drop > 2 in) >= 1", Truth.Yes)]
    [InlineData("count(oil_pan, oil_pan.dented) >= 1", Truth.Unknown)]
    [InlineData("count(starter) < 1", Truth.Yes)]
    [InlineData("sum(oil_pan, oil_pan.drop) is 4..9 in", Truth.Yes)]
    [InlineData("sum(oil_pan, oil_pan.drop) is 4..8 in", Truth.Unknown)]
    [InlineData("sum(oil_pan, oil_pan.drop, oil_pan.drop > 2 in) is 3..8 in", Truth.Yes)]
    [InlineData("least(oil_pan, oil_pan.drop) is 1 in", Truth.Yes)]
    [InlineData("least(oil_pan, oil_pan.drop, oil_pan.drop > 2 in) is 3 in", Truth.Yes)]
    [InlineData("greatest(oil_pan, oil_pan.drop) >= 3 in", Truth.Yes)]
    [InlineData("greatest(oil_pan, oil_pan.drop) >= 4 in", Truth.Unknown)]
    [InlineData("greatest(oil_pan, oil_pan.drop) > 5 in", Truth.No)]
    [InlineData("least(starter, 1 in) < 100 in", Truth.No)]
    [InlineData("greatest(starter, 1 in) < 0 in", Truth.Yes)]
    public void Evaluate_OverTwoSureAndOnePossiblePart_HoldsWhatEachCaseGives(string condition, Truth expected)
    {
        var (rules, bag) = Compile(RuleText("", $"\"{condition}\"", "stop: x"));
        Assert.False(bag.HasErrors, bag.ToSnippets());
        Assert.Equal(expected, rules.Rules[0].Tests[0].Evaluate(ThreePans(rules), SupposedBeliefs.Bind(rules, rules.Rules[0])));
    }

    [Theory]
    [InlineData("where_least(oil_pan, oil_pan.drop, oil_pan.drop < 4 in)", "oil pan 1")]
    [InlineData("where_greatest(oil_pan, oil_pan.drop, oil_pan.drop < 4 in)", "oil pan 2")]
    [InlineData("least(oil_pan, oil_pan.drop, oil_pan.drop < 4 in)", "1 in")]
    [InlineData("where_least(oil_pan, oil_pan.drop)", "(not known yet)")]
    [InlineData("least(starter, 1 in)", "(not known yet)")]
    public void Text_OfAnAggregate_IsShownWhereItIsKnown(string expression, string expected)
    {
        var (rules, bag) = Compile(RuleText("", "oil_pan.drop > 0 in", $"stop: \"{{{expression}}}\""));
        Assert.False(bag.HasErrors, bag.ToSnippets());
        var stop = Assert.IsType<Conclusion.Stop>(rules.Rules[0].Conclusions[0]);
        Assert.Equal(expected, stop.Text.Render(ThreePans(rules), SupposedBeliefs.Bind(rules, rules.Rules[0]), UnitSystem.Us));
    }

    [Fact]
    public void Reads_OfAnAggregate_AreThoseOfEveryPart()
    {
        var (rules, _) = Compile(RuleText("", "\"least(oil_pan, oil_pan.drop, covers(dust_cover, oil_pan)) < 1 in\"", "stop: x"));
        var rule = rules.Rules[0];
        var reads = rule.Tests[0].Reads(SupposedBeliefs.Bind(rules, rule), ThreePans(rules).PartsOf).ToList();
        Assert.Equal(3, reads.OfType<Reading.OfFact>().Count(read => read.Key.Fact.Name == "drop"));
        Assert.Equal(3, reads.OfType<Reading.OfPart>().Count());
        Assert.Equal(["oil_pan_1", "oil_pan_2", "oil_pan_3"], reads.OfType<Reading.OfRelation>().Select(read => read.B.Name));
    }

    [Theory]
    [InlineData("least(oil_pan) > 1 in", "'least' takes 2 arguments and a condition, or none, here is 1")]
    [InlineData("sum(1 in, 2 in) > 1 in", "'sum' takes the name of a kind, as in 'sum(starter, starter.mass)'")]
    [InlineData("count(oil_pam) > 1", "there is no kind 'oil_pam'; did you mean 'oil_pan'?")]
    [InlineData("sum(engine, engine.warm) > 1 degF", "a temperature cannot be added up; what can be is a length, a mass, a duration and the like")]
    [InlineData("least(oil_pan, oil_pan.drop, oil_pan.bolts) > 1 in", "expected a condition, this is a count")]
    [InlineData("where_least(oil_pan, oil_pan.drop) > 1 in", "expected a quantity, this is a free text")]
    public void Compile_OfAMistake_SaysWhatIsDue(string condition, string complaint)
    {
        var (_, bag) = Compile(RuleText("", $"\"{condition}\"", "stop: x"));
        Assert.EndsWith(complaint, bag.Ordered().First(diagnostic => diagnostic.Severity == Severity.Error).ToLine(), StringComparison.Ordinal);
    }

    [Fact]
    public void Compile_OfAFactSetFromItsOwnSum_IsARing()
    {
        var (_, bag) = Compile(RuleText("", "oil_pan.dented", "set: {oil_pan.needed: \"sum(oil_pan, oil_pan.needed)\"}"));
        Assert.Contains(bag.Ordered(), diagnostic => diagnostic.Severity == Severity.Error && diagnostic.Message.Contains("oil_pan.needed", StringComparison.Ordinal));
    }

    private static SupposedBeliefs ThreePans(RuleBase rules)
    {
        var beliefs = new SupposedBeliefs();
        (beliefs.Parts["oil_pan_1"], beliefs.Parts["oil_pan_2"], beliefs.Parts["oil_pan_3"]) = (Truth.Yes, Truth.Yes, Truth.Unknown);
        return beliefs.With(rules.Vocabulary, "oil_pan_1.drop", "1 in").With(rules.Vocabulary, "oil_pan_2.drop", "3 in").With(rules.Vocabulary, "oil_pan_3.drop", "5 in");
    }
}
