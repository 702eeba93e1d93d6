using Xunit;
using static ProcedureRules.Tests.Language.GivenLanguage;

namespace ProcedureRules.Tests.Language;

/// <summary>Messages about how a text of the language is written, whole.</summary>
public class SyntaxMessagesTests
{
    [Fact]
    public void Compile_MissingValue_IsExplained() => Assert.Equal(
        """
        more.yaml:8:28: error PR0301: expected a value after '<', found the end of the text
        8 |     when: [ "oil_pan.drop <" ]
          |                            ^
        """,
        Complaints("", "\"oil_pan.drop <\"", "stop: x"));

    [Fact]
    public void Compile_MissingParenthesis_IsExplained() => Assert.Equal(
        """
        more.yaml:8:34: error PR0301: expected ')', found the end of the text
        8 |     when: [ "(oil_pan.drop < 2 in" ]
          |                                  ^
        """,
        Complaints("", "\"(oil_pan.drop < 2 in\"", "stop: x"));

    [Fact]
    public void Compile_MissingBracket_IsExplained() => Assert.Equal(
        """
        more.yaml:8:45: error PR0301: expected ',' or ']', found the end of the text
        8 |     when: [ "fan_shroud.pieces is [one_piece" ]
          |                                             ^
        """,
        Complaints("", "\"fan_shroud.pieces is [one_piece\"", "stop: x"));

    [Fact]
    public void Compile_MissingFact_IsExplained() => Assert.Equal(
        """
        more.yaml:8:23: error PR0301: expected a fact or an aspect after 'oil_pan.', found '<'
        8 |     when: [ "oil_pan. < 2 in" ]
          |                       ^
        """,
        Complaints("", "\"oil_pan. < 2 in\"", "stop: x"));

    [Fact]
    public void Compile_TwoValues_IsExplained() => Assert.Equal(
        """
        more.yaml:8:27: error PR0301: expected an operator or the end of the text, found 'oil_pan'
        8 |     when: [ "oil_pan.drop oil_pan.needed" ]
          |                           ^^^^^^^
        """,
        Complaints("", "\"oil_pan.drop oil_pan.needed\"", "stop: x"));

    [Fact]
    public void Compile_ChainedComparison_IsExplained() => Assert.Equal(
        """
        more.yaml:8:34: error PR0301: comparisons cannot be chained: write 'a < b and b < c'
        8 |     when: [ "1 in < oil_pan.drop < 2 in" ]
          |                                  ^
        """,
        Complaints("", "\"1 in < oil_pan.drop < 2 in\"", "stop: x"));

    [Fact]
    public void Compile_EqualsSign_IsExplained() => Assert.Equal(
        """
        more.yaml:8:32: error PR0302: '==' is no operator here; write 'is'
        8 |     when: [ "fan_shroud.pieces == one_piece" ]
          |                                ^^
        """,
        Complaints("", "\"fan_shroud.pieces == one_piece\"", "stop: x"));

    [Fact]
    public void Compile_Ampersands_IsExplained() => Assert.Equal(
        """
        more.yaml:8:29: error PR0302: '&&' is no operator here; write 'and'
        8 |     when: [ "oil_pan.dented && any(oil_cooler)" ]
          |                             ^^
        """,
        Complaints("", "\"oil_pan.dented && any(oil_cooler)\"", "stop: x"));

    [Fact]
    public void Compile_MissingPart_IsExplained() => Assert.Equal(
        """
        more.yaml:8:17: error PR0301: expected a part after 'on', found the end of the text
        8 |     when: [ s on ]
          |                 ^
        """,
        Complaints("s: step", "s on", "detail: x"));

    [Fact]
    public void Compile_MissingState_IsExplained() => Assert.Equal(
        """
        more.yaml:8:35: error PR0301: expected a state of 'oil_pan.place', found the end of the text
        8 |     when: [ s leaves oil_pan.place ]
          |                                   ^
        """,
        Complaints("s: step", "s leaves oil_pan.place", "detail: x"));

    [Fact]
    public void Compile_OrderWithoutBefore_IsExplained() => Assert.Equal(
        """
        more.yaml:9:22: error PR0301: expected 'before', as in 's before t', found 'after'
        9 |     then: [ order: s after t ]
          |                      ^^^^^
        """,
        Complaints("s: step, t: step", "s on oil_pan, t on starter", "order: s after t"));

    [Fact]
    public void Compile_UnknownUnit_IsExplained() => Assert.Equal(
        """
        more.yaml:8:31: error PR0303: 'inn' is no unit and no operator; did you mean 'in'?
        8 |     when: [ "oil_pan.drop < 2 inn" ]
          |                               ^^^
        """,
        Complaints("", "\"oil_pan.drop < 2 inn\"", "stop: x"));

    [Fact]
    public void Compile_UnitTouchingItsNumber_IsExplained() => Assert.Equal(
        """
        more.yaml:8:30: error PR0303: 'inn' is not a unit here; did you mean 'in'?
        8 |     when: [ "oil_pan.drop < 2inn" ]
          |                              ^^^
        """,
        Complaints("", "\"oil_pan.drop < 2inn\"", "stop: x"));

    [Fact]
    public void Compile_DecimalComma_IsExplained() => Assert.Equal(
        """
        more.yaml:8:30: error PR0303: a comma is no decimal point; write '2.5 in'
        8 |     when: [ "oil_pan.drop < 2,5 in" ]
          |                              ^
        """,
        Complaints("", "\"oil_pan.drop < 2,5 in\"", "stop: x"));

    [Fact]
    public void Compile_ForeignCharacter_IsExplained() => Assert.Equal(
        """
        more.yaml:8:27: error PR0301: expected an operator or the end of the text, found '?'
        8 |     when: [ "oil_pan.drop ? 2 in" ]
          |                           ^
        """,
        Complaints("", "\"oil_pan.drop ? 2 in\"", "stop: x"));

    [Fact]
    public void Compile_OpenBrace_IsExplained() => Assert.Equal(
        """
        more.yaml:9:30: error PR0305: this brace is not closed; a brace itself is written '{{'
        9 |     then: [ stop: "Lower the {oil_pan" ]
          |                              ^
        """,
        Complaints("", "oil_pan.dented", "stop: \"Lower the {oil_pan\""));

    [Fact]
    public void Compile_StrayBrace_IsExplained() => Assert.Equal(
        """
        more.yaml:9:37: error PR0305: this brace closes nothing; a brace itself is written '}}'
        9 |     then: [ stop: "Lower the oil_pan}" ]
          |                                     ^
        """,
        Complaints("", "oil_pan.dented", "stop: \"Lower the oil_pan}\""));

    [Fact]
    public void Compile_EmptyBraces_IsExplained() => Assert.Equal(
        """
        more.yaml:9:30: error PR0305: expected an expression between the braces, found nothing
        9 |     then: [ stop: "Lower the {}" ]
          |                              ^^
        """,
        Complaints("", "oil_pan.dented", "stop: \"Lower the {}\""));

    [Fact]
    public void Compile_WordListAsArgument_IsExplained() => Assert.Equal(
        """
        more.yaml:8:21: error PR0301: expected a value after '(', found '['
        8 |     when: [ "covers([a], oil_pan)" ]
          |                     ^
        """,
        Complaints("", "\"covers([a], oil_pan)\"", "stop: x"));
}
