using ProcedureRules.Diagnostics;
using ProcedureRules.Language;
using ProcedureRules.Language.Compiling;
using ProcedureRules.Packs;
using Xunit;
using static ProcedureRules.Tests.Language.GivenLanguage;

namespace ProcedureRules.Tests.Language;

public class RuleCompilerTests
{
    [Fact]
    public void Compile_VocabularyAlone_HasNoErrors()
    {
        var (rules, bag) = Compile("");
        Assert.False(bag.HasErrors, bag.ToSnippets());
        Assert.Equal(0, rules.AuthoredCount);
    }

    [Fact]
    public void Compile_RuleOfTheReference_HasPatternsInOrder()
    {
        var rule = Rule("cover: part, inner: part, s: step", "s leaves inner.place fitted, \"covers(cover, inner)\"", "need: cover.place is off");
        Assert.Equal(
            [
                new Pattern(new(PredicateSort.Leaves, "place", "fitted"), 2, 1, "s leaves inner.place fitted"),
                new Pattern(new(PredicateSort.Related, "covers"), 0, 1, "covers(cover, inner)"),
            ],
            rule.Patterns);
        var need = Assert.IsType<Conclusion.Need>(Assert.Single(rule.Conclusions));
        Assert.Equal((2, 0, "place", 2UL, IfUnknown.BehindCheck), (need.Step, need.State.Slot, need.State.Aspect.Name, need.State.States.Bits, need.IfUnknown));
    }

    [Fact]
    public void Compile_ConclusionThatNamesAKindOfItsOwn_IsARuleOfItsOwn()
    {
        var (rules, bag) = Compile(RuleText(
            "s: step", "s on oil_pan", "{danger: It drips}, {need: fan_shroud.place is off}, {detail: Slowly}, {set: {fan_shroud.rust: light}}, {need: engine.hold is jack}"));
        Assert.False(bag.HasErrors, bag.ToSnippets());
        Assert.Equal(
            [("r", "Caution Detail"), ("r (fan_shroud)", "Need Set"), ("r (engine)", "Need")],
            rules.Rules.Take(rules.AuthoredCount).Select(rule => (rule.Name, string.Join(' ', rule.Conclusions.Select(conclusion => conclusion.GetType().Name)))));
        Assert.Equal(["s", "oil_pan", "fan_shroud"], rules.Rules[1].Variables.Select(variable => variable.Name));
        Assert.Equal(["s on oil_pan", "oil_pan", "fan_shroud"], rules.Rules[1].Patterns.Select(pattern => pattern.Text));
    }

    [Fact]
    public void Compile_RuleWithAMistake_LeavesOnlyThatOneOut()
    {
        var (rules, bag) = Compile("""
            rules:
              - {rule: wrong, when: [ oil_pan.drpo > 1 in ], then: [ stop: x ], because: x, basis: common practice}
              - {rule: right, when: [ oil_pan.drop > 1 in ], then: [ stop: x ], because: x, basis: common practice}
            """);
        Assert.True(bag.HasErrors);
        Assert.Equal("right", Assert.Single(rules.Rules.Take(rules.AuthoredCount)).Name);
    }

    [Fact]
    public void Compile_NameOfAPackThatIsNotUsed_IsExplained()
    {
        var bag = new DiagnosticBag();
        var packs = PackReader.Read(
            [
                new SourceFile("shop.yaml", Shop),
                new SourceFile("tools.yaml", "pack: tools\nversion: 1.0.0\nabout: x\nkinds:\n  hoist: {}\n"),
                new SourceFile("more.yaml", "pack: more\nversion: 1.0.0\nabout: x\nuses: [shop]\n" + RuleText("", "any(hoist)", "stop: x")),
            ],
            bag);
        RuleCompiler.Compile(packs, null, bag);
        Assert.Equal(
            """
            more.yaml:8:17: error PR0202: the kind 'hoist' belongs to the pack 'tools', which this pack does not use
            8 |     when: [ any(hoist) ]
              |                 ^^^^^
              = declared here: tools.yaml:5:3
              = note: add 'tools' to 'uses'
            """,
            string.Concat(bag.Ordered().Where(diagnostic => diagnostic.Severity == Severity.Error).Select(diagnostic => diagnostic.ToSnippet())));
    }
}
