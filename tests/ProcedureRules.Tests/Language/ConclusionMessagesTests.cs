using Xunit;
using static ProcedureRules.Tests.Language.GivenLanguage;

namespace ProcedureRules.Tests.Language;

/// <summary>Messages about conclusions, whole.</summary>
public class ConclusionMessagesTests
{
    [Fact]
    public void Compile_OperationOnWrongKind_IsExplained() => Assert.Equal(
        """
        more.yaml:9:32: error PR0404: the operation 'remove_starter' takes a part of the kind 'starter', this is 'oil_pan'
        9 |     then: [ do: remove_starter(oil_pan) ]
          |                                ^^^^^^^
          = declared here: shop.yaml:50:3
        """,
        Complaints("s: step", "s on oil_pan", "do: remove_starter(oil_pan)"));

    [Fact]
    public void Compile_OperationOnMoreGeneralKind_IsExplained() => Assert.Equal(
        """
        more.yaml:9:32: error PR0404: the operation 'remove_starter' takes a part of the kind 'starter', this is 'part'
        9 |     then: [ do: remove_starter(x) ]
          |                                ^
          = declared here: shop.yaml:50:3
        """,
        Complaints("x: part", "\"covers(x, oil_pan)\"", "do: remove_starter(x)"));

    [Fact]
    public void Compile_WorkAsText_IsExplained() => Assert.Equal(
        """
        more.yaml:9:22: error PR0301: expected an operator or the end of the text, found 'the'
        9 |     then: [ do: take the starter down ]
          |                      ^^^
        """,
        Complaints("s: step", "s on oil_pan", "do: take the starter down"));

    [Fact]
    public void Compile_WorkWithoutPart_IsExplained() => Assert.Equal(
        """
        more.yaml:9:17: error PR0408: expected an operation on a part, as in 'remove_starter(starter)'
        9 |     then: [ do: remove_starter ]
          |                 ^^^^^^^^^^^^^^
        """,
        Complaints("s: step", "s on oil_pan", "do: remove_starter"));

    [Fact]
    public void Compile_NeedOfFact_IsExplained() => Assert.Equal(
        """
        more.yaml:9:19: error PR0310: 'oil_pan.dented' is a fact, an aspect is due here
        9 |     then: [ need: oil_pan.dented is yes ]
          |                   ^^^^^^^^^^^^^^
        """,
        Complaints("s: step", "s on oil_pan", "need: oil_pan.dented is yes"));

    [Fact]
    public void Compile_NeedAsWord_IsExplained() => Assert.Equal(
        """
        more.yaml:9:19: error PR0405: expected a state condition, as in 'engine.height is raised'
        9 |     then: [ need: raised ]
          |                   ^^^^^^
        """,
        Complaints("s: step", "s on oil_pan", "need: raised"));

    [Fact]
    public void Compile_NeedOfMisspeltState_IsExplained() => Assert.Equal(
        """
        more.yaml:9:34: error PR0207: 'jak' is not a state of 'engine.hold'; did you mean 'jack'?
        9 |     then: [ need: engine.hold is jak ]
          |                                  ^^^
          = note: its states are 'mounts', 'jack', 'hoist' or 'blocks'
        """,
        Complaints("s: step", "s on oil_pan", "need: engine.hold is jak"));

    [Fact]
    public void Compile_NeedOfFigure_IsExplained() => Assert.Equal(
        """
        more.yaml:9:34: error PR0405: expected a state of 'engine.hold'
        9 |     then: [ need: engine.hold is 2 in ]
          |                                  ^^^^
          = note: its states are 'mounts', 'jack', 'hoist' or 'blocks'
        """,
        Complaints("s: step", "s on oil_pan", "need: engine.hold is 2 in"));

    [Fact]
    public void Compile_NeedWithoutStep_IsExplained() => Assert.Equal(
        """
        more.yaml:9:13: error PR0407: 'need' is about a step, and the rule has none
        9 |     then: [ need: vehicle.height is raised ]
          |             ^^^^
          = note: declare one under 'for', as in 'for: {s: step}', and bind it in 'when'
        """,
        Complaints("", "oil_pan.dented", "need: vehicle.height is raised"));

    [Fact]
    public void Compile_NeedOfSeveralSteps_IsExplained() => Assert.Equal(
        """
        more.yaml:9:13: error PR0407: which step is 'need' about: 's' or 't'? Name it as 'at'
        9 |     then: [ need: vehicle.height is raised ]
          |             ^^^^
        """,
        Complaints("s: step, t: step", "s on oil_pan, t on starter", "need: vehicle.height is raised"));

    [Fact]
    public void Compile_OrderOfParts_IsExplained() => Assert.Equal(
        """
        more.yaml:9:29: error PR0401: 'oil_pan' is a part, a step is due here
        9 |     then: [ order: s before oil_pan ]
          |                             ^^^^^^^
        """,
        Complaints("s: step", "s on oil_pan", "order: s before oil_pan"));

    [Fact]
    public void Compile_OrderOfOneStep_IsExplained() => Assert.Equal(
        """
        more.yaml:9:20: error PR0408: 's' cannot come before itself
        9 |     then: [ order: s before s ]
          |                    ^^^^^^^^^^
        """,
        Complaints("s: step", "s on oil_pan", "order: s before s"));

    [Fact]
    public void Compile_ForbidOfUnknownStep_IsExplained() => Assert.Equal(
        """
        more.yaml:9:21: error PR0401: 't' is no step of this rule
        9 |     then: [ forbid: t ]
          |                     ^
          = note: steps are declared under 'for', as in 'for: {t: step}'
        """,
        Complaints("s: step", "s on oil_pan", "forbid: t"));

    [Fact]
    public void Compile_RelateOfPart_IsExplained() => Assert.Equal(
        """
        more.yaml:9:21: error PR0408: expected a relation of two parts, as in 'covers(dust_cover, oil_pan)'
        9 |     then: [ relate: oil_pan ]
          |                     ^^^^^^^
        """,
        Complaints("s: step", "s on oil_pan", "relate: oil_pan"));

    [Fact]
    public void Compile_CauseAsName_IsExplained() => Assert.Equal(
        """
        more.yaml:9:18: error PR0408: expected a cause of a part, as in 'worn_out(starter)'
        9 |     then: [ for: worn ]
          |                  ^^^^
        """,
        Complaints("s: step", "s on oil_pan", "for: worn"));

    [Fact]
    public void Compile_CauseOfWrongKind_IsExplained() => Assert.Equal(
        """
        more.yaml:9:23: error PR0404: the cause 'worn' takes a part of the kind 'starter', this is 'oil_pan'
        9 |     then: [ for: worn(oil_pan) ]
          |                       ^^^^^^^
          = declared here: shop.yaml:72:3
        """,
        Complaints("s: step", "s on oil_pan", "for: worn(oil_pan)"));

    [Fact]
    public void Compile_MisspeltCause_IsExplained() => Assert.Equal(
        """
        more.yaml:9:18: error PR0201: there is no cause 'wron'; did you mean 'worn'?
        9 |     then: [ for: wron(starter) ]
          |                  ^^^^
        """,
        Complaints("s: step", "s on oil_pan", "for: wron(starter)"));

    [Fact]
    public void Compile_OneOfInOneOf_IsExplained() => Assert.Equal(
        """
        more.yaml:9:43: error PR0408: a 'one_of' cannot stand inside an option of another; write its ways as options of the outer one
        9 |     then: [ one_of: [ {option: a, then: [ one_of: [ {option: b} ] ]} ] ]
          |                                           ^^^^^^
        """,
        Complaints("s: step", "s on oil_pan", "one_of: [ {option: a, then: [ one_of: [ {option: b} ] ]} ]"));
}
