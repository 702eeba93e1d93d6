using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Language.Compiling;
using ProcedureRules.Quantities;
using Xunit;
using static ProcedureRules.Tests.Language.GivenLanguage;

namespace ProcedureRules.Tests.Language;

/// <summary>What texts with braces read like.</summary>
public class TemplateTests
{
    [Theory]
    [InlineData("Drops {oil_pan.drop}", "oil_pan.drop", "2 in", "Drops 2 in", "Drops 50.8 mm")]
    [InlineData("Drops {oil_pan.drop}", "oil_pan.drop", "1..2 in", "Drops 1..2 in", "Drops 25.4..50.8 mm")]
    [InlineData("Lacks {3 in - oil_pan.drop}", "oil_pan.drop", "2 in", "Lacks 1 in", "Lacks 25.4 mm")]
    [InlineData("It is {fan_shroud.pieces}", "fan_shroud.pieces", "one_piece", "It is one piece", "It is one piece")]
    [InlineData("It is {fan_shroud.pieces}", "fan_shroud.pieces", "one_piece|none", "It is one piece or none", "It is one piece or none")]
    [InlineData("Dented: {oil_pan.dented}", "oil_pan.dented", "yes", "Dented: yes", "Dented: yes")]
    [InlineData("Far: {oil_pan.drop > 1 in}", "oil_pan.drop", "2 in", "Far: yes", "Far: yes")]
    [InlineData("Seen: {oil_pan.note}", "oil_pan.note", "rust", "Seen: rust", "Seen: rust")]
    [InlineData("{oil_pan} and {{braces}}", "oil_pan.dented", "yes", "Oil pan and {braces}", "Oil pan and {braces}")]
    [InlineData("the {engine} itself", "oil_pan.dented", "yes", "the engine itself", "the engine itself")]
    [InlineData("plain", "oil_pan.dented", "yes", "plain", "plain")]
    [InlineData("", "oil_pan.dented", "yes", "", "")]
    public void Render_WhenKnown_ShowsTheValueInTheUnitsAskedFor(string text, string path, string value, string us, string si)
    {
        var (rules, rule) = Compiled(text);
        var beliefs = new SupposedBeliefs().With(rules.Vocabulary, path, value);
        var words = rule.Because!;
        Assert.Equal((us, si), (words.Render(beliefs, SupposedBeliefs.Bind(rules, rule), UnitSystem.Us), words.Render(beliefs, SupposedBeliefs.Bind(rules, rule), UnitSystem.Si)));
    }

    [Theory]
    [InlineData("{oil_pan.drop}", "(drop: ask)")]
    [InlineData("{fan_shroud.pieces}", "(pieces: ask)")]
    [InlineData("{oil_pan.dented}", "(dented: ask)")]
    [InlineData("{oil_pan.note}", "(note: ask)")]
    [InlineData("{oil_pan.drop + 1 in}", "(not known yet)")]
    [InlineData("{oil_pan.needed}", "(not known yet)")]
    [InlineData("{oil_pan.drop > 1 in}", "(not known yet)")]
    [InlineData("{engine.rise}", "(not known yet)")]
    [InlineData("{demanded(engine.rise) + 1 in}", "(not known yet)")]
    public void Render_WhenNotKnown_SaysWhatToAskForAndMakesNothingUp(string text, string expected)
    {
        var (rules, rule) = Compiled(text);
        Assert.Equal(expected, rule.Because!.Render(new SupposedBeliefs(), SupposedBeliefs.Bind(rules, rule), UnitSystem.Us));
    }

    [Fact]
    public void Render_OfADemandWithOneEnd_SaysAtLeast()
    {
        var (rules, rule) = Compiled("Raise it {engine.rise}");
        var beliefs = new SupposedBeliefs();
        beliefs.Demands["rise"] = Quantity.Between(0.0254, double.PositiveInfinity, Dimension.Length);
        Assert.Equal("Raise it at least 1 in", rule.Because!.Render(beliefs, SupposedBeliefs.Bind(rules, rule), UnitSystem.Us));
    }

    [Theory]
    [InlineData(0, 2.286, "Raise it 0..6 in")] // 0 to 90 in reckoned from nothing: 6 in is what occurs
    [InlineData(0.0254, 0.0508, "Raise it 1..2 in")]
    [InlineData(0.5, 0.5, "Raise it 19.69 in")]
    public void Render_OfADemand_TellsWhatOfItOccurs(double least, double most, string expected)
    {
        var (rules, rule) = Compiled("Raise it {engine.rise}");
        var beliefs = new SupposedBeliefs();
        beliefs.Demands["rise"] = Quantity.Between(least, most, Dimension.Length);
        Assert.Equal(expected, rule.Because!.Render(beliefs, SupposedBeliefs.Bind(rules, rule), UnitSystem.Us));
    }

    [Fact]
    public void Render_OfAStep_ShowsItsInstruction()
    {
        var (rules, bag) = Compile(RuleText("s: step", "s on oil_pan", "detail: \"Before this: {s}\""));
        Assert.False(bag.HasErrors, bag.ToSnippets());
        var rule = rules.Rules[0];
        var detail = Assert.IsType<Conclusion.Detail>(rule.Conclusions[0]);
        Assert.Equal("Before this: Clean the oil pan", detail.Text.Render(new SupposedBeliefs(), SupposedBeliefs.Bind(rules, rule), UnitSystem.Us));
    }

    [Fact]
    public void Texts_OfDefinitions_AreTemplatesOfTheirPart()
    {
        var (rules, _) = Compile("");
        var names = rules.Vocabulary;
        var (pan, cover) = (new Part("the_pan", names.Kinds["oil_pan"], "deep pan"), new Part("cover", names.Kinds["dust_cover"]));
        string Render(Template template, params object[] parts) => template.Render(new SupposedBeliefs(), new(parts), UnitSystem.Us);
        Assert.Equal("Take the deep pan down", Render(rules.Instructions[names.Operations["remove_pan"]], pan));
        Assert.Equal("How far does the deep pan drop?", Render(rules.Questions[names.FactOf(pan.Kind, "drop")!], pan));
        Assert.Equal("Lower the deep pan and measure.", Render(rules.WaysToFind[names.FactOf(pan.Kind, "drop")!], pan));
        Assert.Equal("Replace the deep pan", Render(rules.Jobs[names.Jobs["replace_pan"]], pan));
        Assert.Equal("Cover covers deep pan", Render(rules.Relations[names.Relations["covers"]], cover, pan));
        Assert.Equal("The starter motor is worn", Render(rules.Causes[names.Causes["worn"]], new Part("starter", names.Kinds["starter"])));
        Assert.DoesNotContain(names.FactOf(pan.Kind, "needed")!, rules.Questions.Keys);
    }

    // A rule that knows all parts of the vocabulary, with the text as its reason.
    private static (RuleBase Rules, CompiledRule Rule) Compiled(string text)
    {
        var (rules, bag) = Compile($$"""
            rules:
              - rule: r
                when: [ "oil_pan.drop < 3 in or fan_shroud.pieces is none or demanded(engine.rise) > 1 in" ]
                then: [ stop: x ]
                because: "{{text}}"
                basis: common practice
            """);
        Assert.False(bag.HasErrors, bag.ToSnippets());
        Assert.Equal("(not known yet)", TemplateCompiler.NotKnown);
        return (rules, rules.Rules[0]);
    }
}
