using Xunit;
using static ProcedureRules.Tests.Language.GivenLanguage;

namespace ProcedureRules.Tests.Language;

/// <summary>Messages about values, demands and waits, whole.</summary>
public class ValueMessagesTests
{
    [Fact]
    public void Compile_SetOfOtherDimension_IsExplained() => Assert.Equal(
        """
        more.yaml:9:35: error PR0306: 'oil_pan.needed' takes a length, this is a gauge pressure
        9 |     then: [ set: {oil_pan.needed: 2 psi} ]
          |                                   ^^^^^
          = declared here: shop.yaml:25:3
        """,
        Complaints("s: step", "s on oil_pan", "set: {oil_pan.needed: 2 psi}"));

    [Fact]
    public void Compile_SetOfOtherWords_IsExplained() => Assert.Equal(
        """
        more.yaml:9:36: error PR0306: 'fan_shroud.rust' takes one of the words 'none', 'light' or 'heavy', this is one of the words 'one_piece', 'two_piece' or 'none'
        9 |     then: [ set: {fan_shroud.rust: fan_shroud.pieces} ]
          |                                    ^^^^^^^^^^^^^^^^^
          = declared here: shop.yaml:41:3
        """,
        Complaints("s: step", "s on oil_pan", "set: {fan_shroud.rust: fan_shroud.pieces}"));

    [Fact]
    public void Compile_SetOfMisspeltWord_IsExplained() => Assert.Equal(
        """
        more.yaml:9:36: error PR0308: 'hevy' is none of the words that are due here; did you mean 'heavy'?
        9 |     then: [ set: {fan_shroud.rust: hevy} ]
          |                                    ^^^^
          = note: the words are 'none', 'light' or 'heavy'
        """,
        Complaints("s: step", "s on oil_pan", "set: {fan_shroud.rust: hevy}"));

    [Fact]
    public void Compile_SetWithoutUnit_IsExplained() => Assert.Equal(
        """
        more.yaml:9:35: error PR0306: 'oil_pan.needed' takes a length, this is a number
        9 |     then: [ set: {oil_pan.needed: 2} ]
          |                                   ^
          = declared here: shop.yaml:25:3
        """,
        Complaints("s: step", "s on oil_pan", "set: {oil_pan.needed: 2}"));

    [Fact]
    public void Compile_SetOfText_IsExplained() => Assert.Equal(
        """
        more.yaml:9:34: error PR0306: 'oil_pan.label' takes a free text, this is a length
        9 |     then: [ set: {oil_pan.label: 2 in} ]
          |                                  ^^^^
          = declared here: shop.yaml:32:3
        """,
        Complaints("s: step", "s on oil_pan", "set: {oil_pan.label: 2 in}"));

    [Fact]
    public void Compile_SetOfDemand_IsExplained() => Assert.Equal(
        """
        more.yaml:9:19: error PR0409: 'engine.rise' only collects demands: write 'at_least' or 'at_most'
        9 |     then: [ set: {engine.rise: 2 in} ]
          |                   ^^^^^^^^^^^
          = declared here: shop.yaml:33:3
        """,
        Complaints("s: step", "s on oil_pan", "set: {engine.rise: 2 in}"));

    [Fact]
    public void Compile_SetOfAspect_IsExplained() => Assert.Equal(
        """
        more.yaml:9:19: error PR0310: 'oil_pan.place' is an aspect, a fact is due here
        9 |     then: [ set: {oil_pan.place: off} ]
          |                   ^^^^^^^^^^^^^
        """,
        Complaints("s: step", "s on oil_pan", "set: {oil_pan.place: off}"));

    [Fact]
    public void Compile_DemandOnWords_IsExplained() => Assert.Equal(
        """
        more.yaml:9:24: error PR0409: 'fan_shroud.rust' is no quantity and takes no demands
        9 |     then: [ at_least: {fan_shroud.rust: light} ]
          |                        ^^^^^^^^^^^^^^^
          = declared here: shop.yaml:41:3
        """,
        Complaints("s: step", "s on oil_pan", "at_least: {fan_shroud.rust: light}"));

    [Fact]
    public void Compile_WaitWithoutStart_IsExplained() => Assert.Equal(
        """
        more.yaml:9:13: error PR0408: the wait does not say from when: 'from' or 'since' is missing
        9 |     then: [ wait: {until: s, least: 8 h} ]
          |             ^^^^
        """,
        Complaints("s: step", "s on oil_pan", "wait: {until: s, least: 8 h}"));

    [Fact]
    public void Compile_WaitWithTwoStarts_IsExplained() => Assert.Equal(
        """
        more.yaml:9:13: error PR0408: a wait starts at a step ('from') or at an event before the job ('since'), not at both
        9 |     then: [ wait: {from: t, since: engine.off_for, until: s, least: 8 h} ]
          |             ^^^^
        """,
        Complaints("s: step, t: step", "s on oil_pan, t on starter", "wait: {from: t, since: engine.off_for, until: s, least: 8 h}"));

    [Fact]
    public void Compile_WaitWithoutLength_IsExplained() => Assert.Equal(
        """
        more.yaml:9:13: error PR0408: the wait does not say how long: 'least' or 'most' is missing
        9 |     then: [ wait: {from: t, until: s} ]
          |             ^^^^
        """,
        Complaints("s: step, t: step", "s on oil_pan, t on starter", "wait: {from: t, until: s}"));

    [Fact]
    public void Compile_WaitSinceLength_IsExplained() => Assert.Equal(
        """
        more.yaml:9:27: error PR0408: 'since' takes a fact that says how long ago something was, 'oil_pan.drop' is no duration
        9 |     then: [ wait: {since: oil_pan.drop, until: s, least: 8 h} ]
          |                           ^^^^^^^^^^^^
          = declared here: shop.yaml:24:3
        """,
        Complaints("s: step", "s on oil_pan", "wait: {since: oil_pan.drop, until: s, least: 8 h}"));

    [Fact]
    public void Compile_WaitOfLength_IsExplained() => Assert.Equal(
        """
        more.yaml:9:60: error PR0306: a wait takes a duration, this is a length
        9 |     then: [ wait: {since: engine.off_for, until: s, least: 8 in} ]
          |                                                            ^^^^
        """,
        Complaints("s: step", "s on oil_pan", "wait: {since: engine.off_for, until: s, least: 8 in}"));

    [Fact]
    public void Compile_TextAboutPartOfNoCondition_IsExplained() => Assert.Equal(
        """
        more.yaml:9:27: error PR0401: no condition here is about 'engine', so a text cannot show what is known of it
        9 |     then: [ detail: "Now {engine.oil}" ]
          |                           ^^^^^^
          = note: what can be named here: 'oil_pan'
        """,
        Complaints("s: step", "s on oil_pan", "detail: \"Now {engine.oil}\""));

    [Fact]
    public void Compile_TextWithoutAnyPart_IsExplained() => Assert.Equal(
        """
        more.yaml:9:27: error PR0401: no condition here is about 'engine', so a text cannot show what is known of it
        9 |     then: [ detail: "Now {engine.oil}" ]
          |                           ^^^^^^
          = note: no part can be named here
        """,
        Complaints("s: step", "s place under", "detail: \"Now {engine.oil}\""));

    [Fact]
    public void Compile_TextAboutPartOfAnotherConclusion_IsExplained() => Assert.Equal(
        """
        more.yaml:9:57: error PR0401: no condition here is about 'engine', so a text cannot show what is known of it
        9 |     then: [ {need: engine.hold is jack}, {detail: "Now {engine.oil}"} ]
          |                                                         ^^^^^^
          = note: what can be named here: 'oil_pan'
        """,
        Complaints("s: step", "s on oil_pan", "{need: engine.hold is jack}, {detail: \"Now {engine.oil}\"}"));

    [Fact]
    public void Compile_StateInText_IsExplained() => Assert.Equal(
        """
        more.yaml:9:27: error PR0307: 'oil_pan.place' is a state, which changes during the work, and cannot stand inside an expression
        9 |     then: [ detail: "Now {oil_pan.place}" ]
          |                           ^^^^^^^^^^^^^
          = note: write it as an entry of its own in 'when', or as 'at_start(...)' for the state before the work
        """,
        Complaints("s: step", "s on oil_pan", "detail: \"Now {oil_pan.place}\""));
}
