using ProcedureRules.Language;
using ProcedureRules.Logic;
using Xunit;
using static ProcedureRules.Tests.Language.GivenLanguage;

namespace ProcedureRules.Tests.Language;

/// <summary>Decision tables: which rows hold where.</summary>
public class TableTests
{
    private const string TwoInputs = """
        tables:
          - table: soak
            inputs: [ fan_shroud.rust, oil_pan.drop ]
            output: oil_pan.soak
            rows:
              - [ none, "-", 0 min ]
              - [ "light | heavy", "0 in .. 2 in", 5 min ]
              - [ light, "2 in .. 12 in", 10 min ]
              - [ heavy, ">= 2 in", "10 min + 20 min" ]
            because: "{fan_shroud} of {oil_pan}"
            basis: common practice
        """;

    [Fact]
    public void Row_OfATable_IsARuleThatSetsTheOutput()
    {
        var (rules, bag) = Compile(TwoInputs);
        Assert.False(bag.HasErrors, bag.ToSnippets());
        Assert.DoesNotContain(bag.Ordered(), diagnostic => diagnostic.Span.File?.Path == "more.yaml");
        Assert.Equal(4, rules.AuthoredCount);
        Assert.Equal(["soak, row 1", "soak, row 2", "soak, row 3", "soak, row 4"], rules.Rules.Take(4).Select(rule => rule.Name));
        Assert.Equal(["fan_shroud.rust light | heavy", "oil_pan.drop 0 in .. 2 in"], rules.Rules[1].Tests.Select(test => test.Text));
        Assert.Equal("10 min + 20 min", Assert.IsType<Conclusion.Set>(Assert.Single(rules.Rules[3].Conclusions)).Value.Text);
        Assert.Equal((1, 2), (rules.Rules[0].Tests.Count, rules.Rules[0].Variables.Count));
    }

    [Theory]
    [InlineData("none", "5 in", "1")]
    [InlineData("heavy", "0 in", "2")]
    [InlineData("light", "2 in", "3")]
    [InlineData("light", "12 in", "3")]
    [InlineData("heavy", "2 in", "4")]
    [InlineData("heavy", "12 in", "4")]
    [InlineData("light", "1..3 in", "2? 3?")]
    [InlineData("none|light", "1 in", "1? 2?")]
    public void Rows_UnderValues_HoldWhereTheyShould(string rust, string drop, string expected)
    {
        var (rules, _) = Compile(TwoInputs);
        var beliefs = new SupposedBeliefs().With(rules.Vocabulary, "fan_shroud.rust", rust).With(rules.Vocabulary, "oil_pan.drop", drop);
        var holding = rules.Rules.Take(4).Select((rule, i) => (Row: i + 1, Truth: Kleene.All(rule.Tests.Select(test => test.Evaluate(beliefs, SupposedBeliefs.Bind(rules, rule))))));
        Assert.Equal(expected, string.Join(' ', holding.Where(row => row.Truth != Truth.No).Select(row => $"{row.Row}{(row.Truth == Truth.Unknown ? "?" : "")}")));
    }

    [Fact]
    public void Table_WithVariables_BindsThemByItsConditions()
    {
        var (rules, bag) = Compile("""
            tables:
              - table: soak
                for: {p: oil_pan, x: part}
                when: [ "covers(x, p)", "at_start(p.place is fitted)", p.dented ]
                inputs: [ p.drop ]
                output: p.soak
                rows:
                  - [ "< 3 in", 5 min ]
                  - [ "3 in .. 5 in", 6 min ]
                  - [ ">= 5 in", 7 min ]
                because: "{x} covers {p}"
                basis: common practice
            """);
        Assert.False(bag.HasErrors, bag.ToSnippets());
        Assert.Equal(3, rules.AuthoredCount);
        Assert.All(rules.Rules.Take(3), rule => Assert.Equal(PredicateSort.Related, rule.Patterns[0].Predicate.Sort));
        Assert.All(rules.Rules.Take(3), rule => Assert.Single(rule.AtStart));
        Assert.Equal(["p.dented", "p.drop 3 in .. 5 in"], rules.Rules[1].Tests.Select(test => test.Text));
    }

    [Fact]
    public void Table_OverSingleFigures_LeavesTheStretchesBetweenThem() => Assert.StartsWith(
        "more.yaml:6:12: error PR0414: no row is for oil_pan.bolts between 4 and 8; nor for oil_pan.bolts between 8 and 12",
        Complaints("""
            tables:
              - table: t
                inputs: [ oil_pan.bolts ]
                output: oil_pan.soak
                rows:
                  - [ "4", 1 min ]
                  - [ "8", 1 min ]
                  - [ ">= 12", 1 min ]
                because: x
                basis: common practice
            """),
        StringComparison.Ordinal);

    [Fact]
    public void Table_TooBigToCheck_SaysSo()
    {
        var words = string.Join(", ", Enumerable.Range(0, 60).Select(i => $"w{i}"));
        Assert.StartsWith(
            "more.yaml:10:12: error PR0413: this table is too big to check: more than 200000 combinations of inputs; split it",
            Complaints($$"""
                facts:
                  engine.a: {type: [{{words}}], ask: x}
                  engine.b: {type: [{{words}}], ask: x}
                  engine.c: {type: [{{words}}], ask: x}
                tables:
                  - table: t
                    inputs: [ engine.a, engine.b, engine.c ]
                    output: oil_pan.soak
                    rows:
                      - [ "-", "-", "-", 1 min ]
                    because: x
                    basis: common practice
                """),
            StringComparison.Ordinal);
    }
}
