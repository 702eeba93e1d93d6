using Xunit;
using static ProcedureRules.Tests.Language.GivenLanguage;

namespace ProcedureRules.Tests.Language;

/// <summary>Messages about conditions and variables, whole.</summary>
public class ConditionMessagesTests
{
    [Fact]
    public void Compile_MisspeltKindOfVariable_IsExplained() => Assert.Equal(
        """
        more.yaml:7:14: error PR0201: there is no kind 'startr'; did you mean 'starter'?
        7 |     for: {x: startr}
          |              ^^^^^^
        """,
        Complaints("x: startr", "\"covers(x, oil_pan)\"", "stop: x"));

    [Fact]
    public void Compile_ReservedVariable_IsExplained() => Assert.Equal(
        """
        more.yaml:7:11: error PR0403: 'min' is a word of the language and cannot name a variable
        7 |     for: {min: part}
          |           ^^^
        """,
        Complaints("min: part", "\"covers(min, oil_pan)\"", "stop: x"));

    [Fact]
    public void Compile_UnboundPart_IsExplained() => Assert.Equal(
        """
        more.yaml:7:11: error PR0402: nothing binds 'x': it stands in no relation, step or job
        7 |     for: {x: oil_pan}
          |           ^
          = note: for each part of the kind, write 'oil_pan' itself instead of a variable
        """,
        Complaints("x: oil_pan", "x.dented", "stop: x"));

    [Fact]
    public void Compile_UnboundStep_IsExplained() => Assert.Equal(
        """
        more.yaml:7:11: error PR0402: nothing binds 's', so the rule would be about every step
        7 |     for: {s: step}
          |           ^
          = note: add a condition such as 's on oil_pan', 's does OPERATION' or 's place under'
        """,
        Complaints("s: step", "oil_pan.dented", "detail: x"));

    [Fact]
    public void Compile_UndeclaredStep_IsExplained() => Assert.Equal(
        """
        more.yaml:8:13: error PR0401: 's' is no step of this rule
        8 |     when: [ s on oil_pan ]
          |             ^
          = note: steps are declared under 'for', as in 'for: {s: step}'
        """,
        Complaints("", "s on oil_pan", "stop: x"));

    [Fact]
    public void Compile_MisspeltStep_IsExplained() => Assert.Equal(
        """
        more.yaml:8:13: error PR0401: 'lfit' is no step of this rule; did you mean 'lift'?
        8 |     when: [ lfit on oil_pan, lift on engine ]
          |             ^^^^
        """,
        Complaints("lift: step", "lfit on oil_pan, lift on engine", "detail: x"));

    [Fact]
    public void Compile_StepAsPart_IsExplained() => Assert.Equal(
        """
        more.yaml:8:32: error PR0401: 's' is a step, a part is due here
        8 |     when: [ s on oil_pan, t on s ]
          |                                ^
        """,
        Complaints("s: step, t: step", "s on oil_pan, t on s", "stop: x"));

    [Fact]
    public void Compile_MisspeltOperation_IsExplained() => Assert.Equal(
        """
        more.yaml:8:20: error PR0201: there is no operation 'remove_startr'; did you mean 'remove_starter'?
        8 |     when: [ s does remove_startr ]
          |                    ^^^^^^^^^^^^^
        """,
        Complaints("s: step", "s does remove_startr", "detail: x"));

    [Fact]
    public void Compile_MisspeltPlace_IsExplained() => Assert.Equal(
        """
        more.yaml:8:21: error PR0201: there is no place 'udner'; did you mean 'under'?
        8 |     when: [ s place udner ]
          |                     ^^^^^
        """,
        Complaints("s: step", "s place udner", "detail: x"));

    [Fact]
    public void Compile_MisspeltEnergy_IsExplained() => Assert.Equal(
        """
        more.yaml:8:22: error PR0201: there is no energy 'electricl'; did you mean 'electrical'?
        8 |     when: [ s energy electricl ]
          |                      ^^^^^^^^^
        """,
        Complaints("s: step", "s energy electricl", "detail: x"));

    [Fact]
    public void Compile_MisspeltPhase_IsExplained() => Assert.Equal(
        """
        more.yaml:8:21: error PR0201: there is no phase 'aprt'; did you mean 'apart'?
        8 |     when: [ s phase aprt ]
          |                     ^^^^
        """,
        Complaints("s: step", "s phase aprt", "detail: x"));

    [Fact]
    public void Compile_MisspeltJob_IsExplained() => Assert.Equal(
        """
        more.yaml:8:17: error PR0201: there is no job 'replace_pans'; did you mean 'replace_pan'?
        8 |     when: [ job replace_pans ]
          |                 ^^^^^^^^^^^^
        """,
        Complaints("", "job replace_pans", "stop: x"));

    [Fact]
    public void Compile_JobOnAnotherKind_IsExplained() => Assert.Equal(
        """
        more.yaml:8:32: error PR0404: the job 'replace_pan' takes a part of the kind 'oil_pan', this is 'starter'
        8 |     when: [ job replace_pan on starter ]
          |                                ^^^^^^^
          = declared here: shop.yaml:74:3
        """,
        Complaints("", "job replace_pan on starter", "stop: x"));

    [Fact]
    public void Compile_MisspeltStateLeft_IsExplained() => Assert.Equal(
        """
        more.yaml:8:36: error PR0207: 'fited' is not a state of 'part.place'; did you mean 'fitted'?
        8 |     when: [ s leaves oil_pan.place fited ]
          |                                    ^^^^^
          = note: its states are 'fitted' or 'off'
        """,
        Complaints("s: step", "s leaves oil_pan.place fited", "detail: x"));

    [Fact]
    public void Compile_FactLeft_IsExplained() => Assert.Equal(
        """
        more.yaml:8:22: error PR0310: 'oil_pan.drop' is a fact, an aspect is due here
        8 |     when: [ s leaves oil_pan.drop fitted ]
          |                      ^^^^^^^^^^^^
        """,
        Complaints("s: step", "s leaves oil_pan.drop fitted", "detail: x"));

    [Fact]
    public void Compile_RelationOfWrongKind_IsExplained() => Assert.Equal(
        """
        more.yaml:8:29: error PR0404: the relation 'traps' takes a part of the kind 'dust_cover', this is 'engine'
        8 |     when: [ "traps(starter, engine)" ]
          |                             ^^^^^^
          = declared here: shop.yaml:45:3
        """,
        Complaints("", "\"traps(starter, engine)\"", "stop: x"));

    [Fact]
    public void Compile_MisspeltRelation_IsExplained() => Assert.Equal(
        """
        more.yaml:8:14: error PR0201: there is no function or relation 'cover'; did you mean 'covers'?
        8 |     when: [ "cover(starter, engine)" ]
          |              ^^^^^
        """,
        Complaints("", "\"cover(starter, engine)\"", "stop: x"));

    [Fact]
    public void Compile_StateGuardingSet_IsExplained() => Assert.Equal(
        """
        more.yaml:8:27: error PR0406: a state changes during the work and cannot guard 'set', which has no moment
        8 |     when: [ s on oil_pan, vehicle.height is raised ]
          |                           ^^^^^^^^^^^^^^^^^^^^^^^^
          = note: for the state before the work, write 'at_start(...)' round it
          = the conclusion is here: more.yaml:9:13
        """,
        Complaints("s: step", "s on oil_pan, vehicle.height is raised", "set: {oil_pan.needed: 2 in}"));

    [Fact]
    public void Compile_StateGuardingHeadOfPlan_IsExplained() => Assert.Equal(
        """
        more.yaml:8:13: error PR0406: a state can guard 'caution' only where it is about a step
        8 |     when: [ vehicle.height is raised ]
          |             ^^^^^^^^^^^^^^^^^^^^^^^^
          = note: for the state before the work, write 'at_start(...)' round it
          = the conclusion is here: more.yaml:9:13
        """,
        Complaints("", "vehicle.height is raised", "caution: x"));
}
