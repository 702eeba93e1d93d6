using Xunit;
using static ProcedureRules.Tests.Language.GivenLanguage;

namespace ProcedureRules.Tests.Language;

/// <summary>Messages about operations, jobs and other definitions, whole.</summary>
public class DefinitionMessagesTests
{
    [Fact]
    public void Compile_NeedOfUnknownState_IsExplained() => Assert.Equal(
        """
        more.yaml:6:100: error PR0207: 'up' is not a state of 'vehicle.height'
        6 |   scrub: {on: oil_pan, text: "Scrub the {it}", place: bay, time: 5 min, needs: [ vehicle.height is up ]}
          |                                                                                                    ^^
          = note: its states are 'ground' or 'raised'
        """,
        Complaints("""
        operations:
          scrub: {on: oil_pan, text: "Scrub the {it}", place: bay, time: 5 min, needs: [ vehicle.height is up ]}
        """));

    [Fact]
    public void Compile_InstructionAboutAnotherPart_IsExplained() => Assert.Equal(
        """
        more.yaml:6:50: error PR0401: no condition here is about 'engine', so a text cannot show what is known of it
        6 |   scrub: {on: oil_pan, text: "Scrub the {it} at {engine.warm}", place: bay, time: 5 min}
          |                                                  ^^^^^^
          = note: what can be named here: 'it'
        """,
        Complaints("""
        operations:
          scrub: {on: oil_pan, text: "Scrub the {it} at {engine.warm}", place: bay, time: 5 min}
        """));

    [Fact]
    public void Compile_FigureThatIsNone_IsExplained() => Assert.Equal(
        """
        more.yaml:6:87: error PR0310: 'oil_pan' has no fact or aspect 'torqe'; did you mean 'torque'?
        6 |   scrub: {on: oil_pan, text: "Scrub the {it}", place: bay, time: 5 min, figures: [ it.torqe ]}
          |                                                                                       ^^^^^
        """,
        Complaints("""
        operations:
          scrub: {on: oil_pan, text: "Scrub the {it}", place: bay, time: 5 min, figures: [ it.torqe ]}
        """));

    [Fact]
    public void Compile_DetailWithMisspeltFact_IsExplained() => Assert.Equal(
        """
        more.yaml:6:91: error PR0310: 'oil_pan' has no fact or aspect 'torqe'; did you mean 'torque'?
        6 |   scrub: {on: oil_pan, text: "Scrub the {it}", place: bay, time: 5 min, detail: [ "To {it.torqe}" ]}
          |                                                                                           ^^^^^
        """,
        Complaints("""
        operations:
          scrub: {on: oil_pan, text: "Scrub the {it}", place: bay, time: 5 min, detail: [ "To {it.torqe}" ]}
        """));

    [Fact]
    public void Compile_JobEndOfMisspeltAspect_IsExplained() => Assert.Equal(
        """
        more.yaml:6:59: error PR0310: 'oil_pan' has no fact or aspect 'plase'; did you mean 'place'?
        6 |   scrub: {on: oil_pan, text: "Scrub the {it}", ends: [ it.plase is fitted ]}
          |                                                           ^^^^^
        """,
        Complaints("""
        jobs:
          scrub: {on: oil_pan, text: "Scrub the {it}", ends: [ it.plase is fitted ]}
        """));

    [Fact]
    public void Compile_JobWorkOnWrongKind_IsExplained() => Assert.Equal(
        """
        more.yaml:6:70: error PR0404: the operation 'remove_starter' takes a part of the kind 'starter', this is 'oil_pan'
        6 |   scrub: {on: oil_pan, text: "Scrub the {it}", do: [ "remove_starter(it)" ]}
          |                                                                      ^^
          = declared here: shop.yaml:50:3
        """,
        Complaints("""
        jobs:
          scrub: {on: oil_pan, text: "Scrub the {it}", do: [ "remove_starter(it)" ]}
        """));

    [Fact]
    public void Compile_VariantThatNeverIs_IsExplained() => Assert.Equal(
        """
        more.yaml:6:65: error PR0410: 'it.drop > 20 in' can never hold, so the rule can never fire
        6 |   scrub: {on: oil_pan, text: "Scrub the {it}", variants: [ {if: it.drop > 20 in, text: x} ]}
          |                                                                 ^^^^^^^^^^^^^^^
          = what 'oil_pan.drop' can be is declared here: shop.yaml:24:3
        """,
        Complaints("""
        jobs:
          scrub: {on: oil_pan, text: "Scrub the {it}", variants: [ {if: it.drop > 20 in, text: x} ]}
        """));

    [Fact]
    public void Compile_QuestionAboutAnotherPart_IsExplained() => Assert.Equal(
        """
        more.yaml:6:45: error PR0401: no condition here is about 'engine', so a text cannot show what is known of it
        6 |   oil_pan.sound: {type: yes_no, ask: "Does {engine.warm} matter?"}
          |                                             ^^^^^^
          = note: what can be named here: 'it'
        """,
        Complaints("""
        facts:
          oil_pan.sound: {type: yes_no, ask: "Does {engine.warm} matter?"}
        """));

    [Fact]
    public void Compile_WhileOfFact_IsExplained() => Assert.Equal(
        """
        more.yaml:6:70: error PR0310: 'it.dented' is a fact, an aspect is due here
        6 |   oil_pan.load: {states: [none, some], normal: none, while: {some: [ it.dented is no ]}}
          |                                                                      ^^^^^^^^^
        """,
        Complaints("""
        aspects:
          oil_pan.load: {states: [none, some], normal: none, while: {some: [ it.dented is no ]}}
        """));

    [Fact]
    public void Compile_RelationTextAboutUnknownPart_IsExplained() => Assert.Equal(
        """
        more.yaml:6:3: error PR0201: there is no value 'c'
        6 |   near: {of: [part, part], text: "{a} by {c}"}
          |   ^^^^
        """,
        Complaints("""
        relations:
          near: {of: [part, part], text: "{a} by {c}"}
        """));

    [Fact]
    public void Compile_RelationHoldingWhileFact_IsExplained() => Assert.Equal(
        """
        more.yaml:6:66: error PR0310: 'a.dented' is a fact, an aspect is due here
        6 |   near: {of: [oil_pan, part], text: "{a} by {b}", holds_while: [ a.dented is yes ]}
          |                                                                  ^^^^^^^^
        """,
        Complaints("""
        relations:
          near: {of: [oil_pan, part], text: "{a} by {b}", holds_while: [ a.dented is yes ]}
        """));
}
