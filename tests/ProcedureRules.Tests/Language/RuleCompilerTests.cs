using Xunit;
using ProcedureRules.Language;
using ProcedureRules.Packs;
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
}
