using Xunit;
using static ProcedureRules.Tests.Language.GivenLanguage;

namespace ProcedureRules.Tests.Language;

/// <summary>Messages about what can never come about, or always does, whole.</summary>
public class OutcomeMessagesTests
{
    [Fact]
    public void Compile_OptionNeverOpen_IsExplained() => Assert.Equal(
        """
        more.yaml:9:39: error PR0410: 'oil_pan.drop > 20 in' can never hold, so this way is never open
        9 |     then: [ one_of: [ {option: a, if: oil_pan.drop > 20 in} ] ]
          |                                       ^^^^^^^^^^^^^^^^^^^^
          = what 'oil_pan.drop' can be is declared here: shop.yaml:24:3
        """,
        Complaints("s: step", "s on oil_pan", "one_of: [ {option: a, if: oil_pan.drop > 20 in} ]"));

    [Fact]
    public void Compile_CheckNeverPassed_IsExplained() => Assert.Equal(
        """
        more.yaml:9:20: error PR0410: 'oil_pan.gap > 2 in' can never hold, so the check can never be passed
        9 |     then: [ check: oil_pan.gap > 2 in ]
          |                    ^^^^^^^^^^^^^^^^^^
          = what 'oil_pan.gap' can be is declared here: shop.yaml:26:3
        """,
        Complaints("s: step", "s on oil_pan", "check: oil_pan.gap > 2 in"));

    [Fact]
    public void Compile_RuleThatNeverFires_IsExplained() => Assert.Equal(
        """
        more.yaml:8:13: error PR0410: 'oil_pan.drop > 20 in' can never hold, so the rule can never fire
        8 |     when: [ oil_pan.drop > 20 in ]
          |             ^^^^^^^^^^^^^^^^^^^^
          = what 'oil_pan.drop' can be is declared here: shop.yaml:24:3
        """,
        Complaints("", "oil_pan.drop > 20 in", "stop: x"));

    [Fact]
    public void Compile_ConditionThatAlwaysHolds_IsExplained() => Assert.Equal(
        """
        more.yaml:8:13: warning PR0411: 'oil_pan.drop >= 0 in' always holds and decides nothing
        8 |     when: [ oil_pan.drop >= 0 in ]
          |             ^^^^^^^^^^^^^^^^^^^^
          = what 'oil_pan.drop' can be is declared here: shop.yaml:24:3
        """,
        Complaints("", "oil_pan.drop >= 0 in", "stop: x"));

    [Fact]
    public void Compile_PartThatAlwaysHolds_IsExplained() => Assert.Equal(
        """
        more.yaml:8:33: warning PR0411: 'fan_shroud.pieces is [one_piece, two_piece, none]' always holds and decides nothing
        8 |     when: [ "oil_pan.dented and fan_shroud.pieces is [one_piece, two_piece, none]" ]
          |                                 ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
          = what 'fan_shroud.pieces' can be is declared here: shop.yaml:39:3
        """,
        Complaints("", "\"oil_pan.dented and fan_shroud.pieces is [one_piece, two_piece, none]\"", "stop: x"));

    [Fact]
    public void Compile_PartThatNeverHolds_IsExplained() => Assert.Equal(
        """
        more.yaml:8:32: warning PR0411: 'oil_pan.drop > 20 in' can never hold and decides nothing
        8 |     when: [ "oil_pan.dented or oil_pan.drop > 20 in" ]
          |                                ^^^^^^^^^^^^^^^^^^^^
          = what 'oil_pan.drop' can be is declared here: shop.yaml:24:3
        """,
        Complaints("", "\"oil_pan.dented or oil_pan.drop > 20 in\"", "stop: x"));

    [Fact]
    public void Compile_ContradictingFigures_IsExplained() => Assert.Equal(
        """
        more.yaml:8:34: error PR0410: this and another condition on 'oil_pan.drop' cannot hold together, so the rule can never fire
        8 |     when: [ oil_pan.drop > 3 in, oil_pan.drop < 2 in ]
          |                                  ^^^^^^^^^^^^^^^^^^^
          = the other is here: more.yaml:8:13
        """,
        Complaints("", "oil_pan.drop > 3 in, oil_pan.drop < 2 in", "stop: x"));

    [Fact]
    public void Compile_TouchingBounds_IsExplained() => Assert.Equal(
        """
        more.yaml:8:35: error PR0410: this and another condition on 'oil_pan.drop' cannot hold together, so the rule can never fire
        8 |     when: [ oil_pan.drop >= 2 in, oil_pan.drop < 2 in ]
          |                                   ^^^^^^^^^^^^^^^^^^^
          = the other is here: more.yaml:8:13
        """,
        Complaints("", "oil_pan.drop >= 2 in, oil_pan.drop < 2 in", "stop: x"));

    [Fact]
    public void Compile_ContradictingWords_IsExplained() => Assert.Equal(
        """
        more.yaml:8:45: error PR0410: this and another condition on 'fan_shroud.pieces' cannot hold together, so the rule can never fire
        8 |     when: [ fan_shroud.pieces is one_piece, fan_shroud.pieces is two_piece ]
          |                                             ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
          = the other is here: more.yaml:8:13
        """,
        Complaints("", "fan_shroud.pieces is one_piece, fan_shroud.pieces is two_piece", "stop: x"));

    [Fact]
    public void Compile_ContradictingStates_IsExplained() => Assert.Equal(
        """
        more.yaml:8:48: error PR0410: this and another condition on 'engine.hold' cannot hold together, so the rule can never fire
        8 |     when: [ s on oil_pan, engine.hold is jack, engine.hold is hoist ]
          |                                                ^^^^^^^^^^^^^^^^^^^^
          = the other is here: more.yaml:8:27
        """,
        Complaints("s: step", "s on oil_pan, engine.hold is jack, engine.hold is hoist", "detail: x"));

    [Fact]
    public void Compile_StepOfTwoOperations_IsExplained() => Assert.Equal(
        """
        more.yaml:8:32: error PR0410: no step is both 's does remove_pan' and 's does clean', so the rule can never fire
        8 |     when: [ s does remove_pan, s does clean ]
          |                                ^^^^^^^^^^^^
          = the other is here: more.yaml:8:13
        """,
        Complaints("s: step", "s does remove_pan, s does clean", "detail: x"));

    [Fact]
    public void Compile_StepOnAnotherKind_IsExplained() => Assert.Equal(
        """
        more.yaml:8:32: error PR0410: no step is both 's does remove_pan' and 's on starter', so the rule can never fire
        8 |     when: [ s does remove_pan, s on starter ]
          |                                ^^^^^^^^^^^^
          = the other is here: more.yaml:8:13
        """,
        Complaints("s: step", "s does remove_pan, s on starter", "detail: x"));

    [Fact]
    public void Compile_StepAtAnotherPlace_IsExplained() => Assert.Equal(
        """
        more.yaml:8:26: error PR0410: no step is both 's place bay' and 's does remove_pan', so the rule can never fire
        8 |     when: [ s place bay, s does remove_pan ]
          |                          ^^^^^^^^^^^^^^^^^
          = the other is here: more.yaml:8:13
        """,
        Complaints("s: step", "s place bay, s does remove_pan", "detail: x"));

    [Fact]
    public void Compile_RingOfOneRule_IsExplained() => Assert.Equal(
        """
        more.yaml:6:11: error PR0412: the rule 'r' needs to know 'oil_pan.needed' to conclude it
        6 |   - rule: r
          |           ^
        """,
        Complaints("", "oil_pan.dented", "set: {oil_pan.needed: oil_pan.needed + 1 in}"));

    [Fact]
    public void Compile_RingOfTwoRules_IsExplained() => Assert.Equal(
        """
        more.yaml:6:11: error PR0412: these rules need to know 'oil_pan.soak' to conclude it: 'a wants b', 'b wants a'
        6 |   - rule: a wants b
          |           ^^^^^^^^^
          = by way of 'b wants a': more.yaml:11:11
        """,
        Complaints("""
        rules:
          - rule: a wants b
            when: [ oil_pan.soak > 1 h ]
            then: [ set: {oil_pan.needed: 2 in} ]
            because: x
            basis: common practice
          - rule: b wants a
            when: [ oil_pan.needed > 1 in ]
            then: [ set: {oil_pan.soak: 10 min} ]
            because: x
            basis: common practice
        """));

    [Fact]
    public void Compile_RingThroughNot_IsExplained() => Assert.Equal(
        """
        more.yaml:6:11: error PR0412: the rule 'r' needs to know 'covers' to conclude it
        6 |   - rule: r
          |           ^
        """,
        Complaints("a: part, b: part", "\"covers(a, b)\", \"not covers(b, a)\"", "relate: \"covers(b, a)\""));

    [Fact]
    public void Compile_RingOfDemands_IsExplained() => Assert.Equal(
        """
        more.yaml:6:11: error PR0412: the rule 'r' needs to know 'demanded(engine.rise)' to conclude it
        6 |   - rule: r
          |           ^
        """,
        Complaints("s: step", "s on oil_pan", "at_least: {engine.rise: engine.rise + 1 in}"));
}
