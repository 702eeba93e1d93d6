using Xunit;
using static ProcedureRules.Tests.Language.GivenLanguage;

namespace ProcedureRules.Tests.Language;

/// <summary>Messages about the types of expressions, whole.</summary>
public class TypeMessagesTests
{
    [Fact]
    public void Compile_LengthAgainstPressure_IsExplained() => Assert.Equal(
        """
        more.yaml:8:27: error PR0306: a length cannot be compared with a gauge pressure
        8 |     when: [ "oil_pan.drop < engine.oil" ]
          |                           ^ left is a length, right is a gauge pressure
          = 'oil_pan.drop' is declared here: shop.yaml:24:3
          = 'engine.oil' is declared here: shop.yaml:34:3
        """,
        Complaints("", "\"oil_pan.drop < engine.oil\"", "stop: x"));

    [Fact]
    public void Compile_GaugeAgainstAbsolute_IsExplained() => Assert.Equal(
        """
        more.yaml:8:25: error PR0306: a gauge pressure cannot be compared with an absolute pressure: one counts from the air around, the other from empty space
        8 |     when: [ "engine.oil > engine.intake" ]
          |                         ^ left is a gauge pressure, right is an absolute pressure
          = 'engine.oil' is declared here: shop.yaml:34:3
          = 'engine.intake' is declared here: shop.yaml:35:3
        """,
        Complaints("", "\"engine.oil > engine.intake\"", "stop: x"));

    [Fact]
    public void Compile_PointAgainstDifference_IsExplained() => Assert.Equal(
        """
        more.yaml:8:36: error PR0306: a temperature difference cannot be compared with a temperature: one is a point on the scale, the other a rise or drop
        8 |     when: [ "engine.warm - 20 degF > 100 degF" ]
          |                                    ^ left is a temperature difference, right is a temperature
        """,
        Complaints("", "\"engine.warm - 20 degF > 100 degF\"", "stop: x"));

    [Fact]
    public void Compile_TorqueAgainstEnergy_IsExplained() => Assert.Equal(
        """
        more.yaml:8:29: error PR0306: a torque cannot be compared with an energy: a torque turns, an energy is spent
        8 |     when: [ "oil_pan.torque is engine.spent" ]
          |                             ^^ left is a torque, right is an energy
          = 'oil_pan.torque' is declared here: shop.yaml:30:3
          = 'engine.spent' is declared here: shop.yaml:38:3
        """,
        Complaints("", "\"oil_pan.torque is engine.spent\"", "stop: x"));

    [Fact]
    public void Compile_NumberWithoutUnit_IsExplained() => Assert.Equal(
        """
        more.yaml:8:27: error PR0306: a length cannot be compared with a number: the number has no unit
        8 |     when: [ "oil_pan.drop < 2" ]
          |                           ^ left is a length, right is a number
          = 'oil_pan.drop' is declared here: shop.yaml:24:3
        """,
        Complaints("", "\"oil_pan.drop < 2\"", "stop: x"));

    [Fact]
    public void Compile_SumOfLengthAndCount_IsExplained() => Assert.Equal(
        """
        more.yaml:8:27: error PR0306: a length and a count cannot be added
        8 |     when: [ "oil_pan.drop + oil_pan.bolts > 2 in" ]
          |                           ^ left is a length, right is a count
          = 'oil_pan.drop' is declared here: shop.yaml:24:3
          = 'oil_pan.bolts' is declared here: shop.yaml:29:3
        """,
        Complaints("", "\"oil_pan.drop + oil_pan.bolts > 2 in\"", "stop: x"));

    [Fact]
    public void Compile_ProductOfTemperature_IsExplained() => Assert.Equal(
        """
        more.yaml:8:26: error PR0306: a temperature and a number cannot be multiplied: what it gives would depend on the scale
        8 |     when: [ "engine.warm * 2 > 10 degF" ]
          |                          ^ left is a temperature, right is a number
          = 'engine.warm' is declared here: shop.yaml:36:3
        """,
        Complaints("", "\"engine.warm * 2 > 10 degF\"", "stop: x"));

    [Fact]
    public void Compile_WordsAgainstQuantity_IsExplained() => Assert.Equal(
        """
        more.yaml:8:27: error PR0306: a length cannot be compared with one of the words 'one_piece', 'two_piece' or 'none'
        8 |     when: [ "oil_pan.drop is fan_shroud.pieces" ]
          |                           ^^ left is a length, right is one of the words 'one_piece', 'two_piece' or 'none'
          = 'oil_pan.drop' is declared here: shop.yaml:24:3
          = 'fan_shroud.pieces' is declared here: shop.yaml:39:3
        """,
        Complaints("", "\"oil_pan.drop is fan_shroud.pieces\"", "stop: x"));

    [Fact]
    public void Compile_WordsOfTwoTypes_IsExplained() => Assert.Equal(
        """
        more.yaml:8:32: error PR0306: one of the words 'one_piece', 'two_piece' or 'none' cannot be compared with one of the words 'none', 'light' or 'heavy'
        8 |     when: [ "fan_shroud.pieces is fan_shroud.rust" ]
          |                                ^^ left is one of the words 'one_piece', 'two_piece' or 'none', right is one of the words 'none', 'light' or 'heavy'
          = 'fan_shroud.pieces' is declared here: shop.yaml:39:3
          = 'fan_shroud.rust' is declared here: shop.yaml:41:3
        """,
        Complaints("", "\"fan_shroud.pieces is fan_shroud.rust\"", "stop: x"));

    [Fact]
    public void Compile_QuantityAsCondition_IsExplained() => Assert.Equal(
        """
        more.yaml:8:14: error PR0307: expected a condition, this is a length
        8 |     when: [ "oil_pan.drop" ]
          |              ^^^^^^^^^^^^
        """,
        Complaints("", "\"oil_pan.drop\"", "stop: x"));

    [Fact]
    public void Compile_ConditionAsQuantity_IsExplained() => Assert.Equal(
        """
        more.yaml:8:14: error PR0307: expected a quantity, this is a yes or no
        8 |     when: [ "oil_pan.dented < 2 in" ]
          |              ^^^^^^^^^^^^^^
        """,
        Complaints("", "\"oil_pan.dented < 2 in\"", "stop: x"));

    [Fact]
    public void Compile_WordsAsCondition_IsExplained() => Assert.Equal(
        """
        more.yaml:8:18: error PR0307: expected a condition, this is one of the words 'one_piece', 'two_piece' or 'none'
        8 |     when: [ "not fan_shroud.pieces" ]
          |                  ^^^^^^^^^^^^^^^^^
        """,
        Complaints("", "\"not fan_shroud.pieces\"", "stop: x"));

    [Fact]
    public void Compile_TextCompared_IsExplained() => Assert.Equal(
        """
        more.yaml:8:14: error PR0307: a free text is shown and never reasoned with; declare the words that it can be
        8 |     when: [ "oil_pan.note is rusty" ]
          |              ^^^^^^^^^^^^
        """,
        Complaints("", "\"oil_pan.note is rusty\"", "stop: x"));

    [Fact]
    public void Compile_WordsForFigure_IsExplained() => Assert.Equal(
        """
        more.yaml:8:30: error PR0307: a length is never one of some words; write a figure or a range, as in 'is 1..2 in'
        8 |     when: [ "oil_pan.drop is [light, heavy]" ]
          |                              ^^^^^^^^^^^^^^
        """,
        Complaints("", "\"oil_pan.drop is [light, heavy]\"", "stop: x"));

    [Fact]
    public void Compile_SignOfTemperature_IsExplained() => Assert.Equal(
        """
        more.yaml:8:14: error PR0307: a sign has no meaning for a temperature
        8 |     when: [ "-engine.warm < 20 degF" ]
          |              ^^^^^^^^^^^^
        """,
        Complaints("", "\"-engine.warm < 20 degF\"", "stop: x"));

    [Fact]
    public void Compile_SeveralMistakesInOneText_IsExplained() => Assert.Equal(
        """
        more.yaml:8:22: error PR0310: 'oil_pan' has no fact or aspect 'drpo'; did you mean 'drop'?
        8 |     when: [ "oil_pan.drpo < 2 in and oil_pan.gap > 1 psi" ]
          |                      ^^^^
        more.yaml:8:50: error PR0306: a length cannot be compared with a gauge pressure
        8 |     when: [ "oil_pan.drpo < 2 in and oil_pan.gap > 1 psi" ]
          |                                                  ^ left is a length, right is a gauge pressure
          = 'oil_pan.gap' is declared here: shop.yaml:26:3
        """,
        Complaints("", "\"oil_pan.drpo < 2 in and oil_pan.gap > 1 psi\"", "stop: x"));
}
