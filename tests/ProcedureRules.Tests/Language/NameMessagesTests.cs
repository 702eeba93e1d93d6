using Xunit;
using static ProcedureRules.Tests.Language.GivenLanguage;

namespace ProcedureRules.Tests.Language;

/// <summary>Messages about names and words, whole.</summary>
public class NameMessagesTests
{
    [Fact]
    public void Compile_PartAsValue_IsExplained() => Assert.Equal(
        """
        more.yaml:8:14: error PR0307: 'oil_pan' is a part or a step and has no value of its own; name one of its facts, as in 'oil_pan.fact'
        8 |     when: [ "oil_pan is rusty" ]
          |              ^^^^^^^
        """,
        Complaints("", "\"oil_pan is rusty\"", "stop: x"));

    [Fact]
    public void Compile_MisspeltWord_IsExplained() => Assert.Equal(
        """
        more.yaml:8:35: error PR0308: 'onepiece' is none of the words that are due here; did you mean 'one_piece'?
        8 |     when: [ "fan_shroud.pieces is onepiece" ]
          |                                   ^^^^^^^^
          = note: the words are 'one_piece', 'two_piece' or 'none'
        """,
        Complaints("", "\"fan_shroud.pieces is onepiece\"", "stop: x"));

    [Fact]
    public void Compile_MisspeltWordInList_IsExplained() => Assert.Equal(
        """
        more.yaml:8:47: error PR0308: 'tow_piece' is none of the words that are due here; did you mean 'two_piece'?
        8 |     when: [ "fan_shroud.pieces is [one_piece, tow_piece]" ]
          |                                               ^^^^^^^^^
          = note: the words are 'one_piece', 'two_piece' or 'none'
        """,
        Complaints("", "\"fan_shroud.pieces is [one_piece, tow_piece]\"", "stop: x"));

    [Fact]
    public void Compile_MisspeltKind_IsExplained() => Assert.Equal(
        """
        more.yaml:8:14: error PR0201: there is no variable or kind 'oilpan'; did you mean 'oil_pan'?
        8 |     when: [ "oilpan.drop < 2 in" ]
          |              ^^^^^^
        """,
        Complaints("", "\"oilpan.drop < 2 in\"", "stop: x"));

    [Fact]
    public void Compile_WordWithoutFact_IsExplained() => Assert.Equal(
        """
        more.yaml:8:14: error PR0307: 'one_piece' is a word of a fact and stands only right of 'is', or where such a word is due
        8 |     when: [ "one_piece is fan_shroud.pieces" ]
          |              ^^^^^^^^^
        """,
        Complaints("", "\"one_piece is fan_shroud.pieces\"", "stop: x"));

    [Fact]
    public void Compile_UnknownBareName_IsExplained() => Assert.Equal(
        """
        more.yaml:8:14: error PR0201: there is no value 'oil_pum'; did you mean 'oil_pan'?
        8 |     when: [ "oil_pum is yes" ]
          |              ^^^^^^^
        """,
        Complaints("", "\"oil_pum is yes\"", "stop: x"));

    [Fact]
    public void Compile_MisspeltFact_IsExplained() => Assert.Equal(
        """
        more.yaml:8:22: error PR0310: 'oil_pan' has no fact or aspect 'drpo'; did you mean 'drop'?
        8 |     when: [ "oil_pan.drpo < 2 in" ]
          |                      ^^^^
        """,
        Complaints("", "\"oil_pan.drpo < 2 in\"", "stop: x"));

    [Fact]
    public void Compile_FactOfAnotherKind_IsExplained() => Assert.Equal(
        """
        more.yaml:8:21: error PR0310: 'engine' has no fact or aspect 'dented'
        8 |     when: [ "engine.dented" ]
          |                     ^^^^^^
          = note: one of that name belongs to 'oil_pan'
        """,
        Complaints("", "\"engine.dented\"", "stop: x"));

    [Fact]
    public void Compile_StateInsideExpression_IsExplained() => Assert.Equal(
        """
        more.yaml:8:32: error PR0307: 'oil_pan.place' is a state, which changes during the work, and cannot stand inside an expression
        8 |     when: [ "oil_pan.dented or oil_pan.place is off" ]
          |                                ^^^^^^^^^^^^^
          = note: write it as an entry of its own in 'when', or as 'at_start(...)' for the state before the work
        """,
        Complaints("", "\"oil_pan.dented or oil_pan.place is off\"", "stop: x"));

    [Fact]
    public void Compile_FactOfStep_IsExplained() => Assert.Equal(
        """
        more.yaml:8:27: error PR0310: 's' is a step and has no facts; conditions on steps are written as in 's place ...'
        8 |     when: [ s on oil_pan, s.place is under ]
          |                           ^^^^^^^
        """,
        Complaints("s: step", "s on oil_pan, s.place is under", "detail: x"));

    [Fact]
    public void Compile_MisspeltStateOfMoment_IsExplained() => Assert.Equal(
        """
        more.yaml:8:45: error PR0207: 'rasied' is not a state of 'vehicle.height'; did you mean 'raised'?
        8 |     when: [ s on oil_pan, vehicle.height is rasied ]
          |                                             ^^^^^^
          = note: its states are 'ground' or 'raised'
        """,
        Complaints("s: step", "s on oil_pan, vehicle.height is rasied", "detail: x"));
}
