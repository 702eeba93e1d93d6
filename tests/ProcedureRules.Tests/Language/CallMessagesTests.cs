using Xunit;
using static ProcedureRules.Tests.Language.GivenLanguage;

namespace ProcedureRules.Tests.Language;

/// <summary>Messages about functions and their arguments, whole.</summary>
public class CallMessagesTests
{
    [Fact]
    public void Compile_MisspeltFunction_IsExplained() => Assert.Equal(
        """
        more.yaml:8:14: error PR0201: there is no function or relation 'mim'; did you mean 'min'?
        8 |     when: [ "mim(oil_pan.drop, 2 in) < 1 in" ]
          |              ^^^
        """,
        Complaints("", "\"mim(oil_pan.drop, 2 in) < 1 in\"", "stop: x"));

    [Fact]
    public void Compile_TooFewArguments_IsExplained() => Assert.Equal(
        """
        more.yaml:8:14: error PR0309: 'min' takes two or more arguments, here is 1
        8 |     when: [ "min(oil_pan.drop) < 1 in" ]
          |              ^^^^^^^^^^^^^^^^^
        """,
        Complaints("", "\"min(oil_pan.drop) < 1 in\"", "stop: x"));

    [Fact]
    public void Compile_WrongArgumentCount_IsExplained() => Assert.Equal(
        """
        more.yaml:8:14: error PR0309: 'if' takes 3 arguments, here are 2
        8 |     when: [ "if(oil_pan.dented, 1 in) < 2 in" ]
          |              ^^^^^^^^^^^^^^^^^^^^^^^^
        """,
        Complaints("", "\"if(oil_pan.dented, 1 in) < 2 in\"", "stop: x"));

    [Fact]
    public void Compile_MixedArguments_IsExplained() => Assert.Equal(
        """
        more.yaml:8:32: error PR0306: the values of 'max' must be of one kind: a length stands before, this is a gauge pressure
        8 |     when: [ "max(oil_pan.drop, engine.oil) > 1 in" ]
          |                                ^^^^^^^^^^
        """,
        Complaints("", "\"max(oil_pan.drop, engine.oil) > 1 in\"", "stop: x"));

    [Fact]
    public void Compile_MixedBranches_IsExplained() => Assert.Equal(
        """
        more.yaml:8:39: error PR0306: the values of 'if' must be of one kind: a length stands before, this is a gauge pressure
        8 |     when: [ "if(oil_pan.dented, 1 in, 2 psi) < 2 in" ]
          |                                       ^^^^^
        """,
        Complaints("", "\"if(oil_pan.dented, 1 in, 2 psi) < 2 in\"", "stop: x"));

    [Fact]
    public void Compile_SizeOfTemperature_IsExplained() => Assert.Equal(
        """
        more.yaml:8:14: error PR0307: a sign has no meaning for a temperature
        8 |     when: [ "abs(engine.warm) > 10 degF" ]
          |              ^^^^^^^^^^^^^^^^
        """,
        Complaints("", "\"abs(engine.warm) > 10 degF\"", "stop: x"));

    [Fact]
    public void Compile_DemandedOfFigure_IsExplained() => Assert.Equal(
        """
        more.yaml:8:23: error PR0309: 'demanded' takes a fact, as in 'demanded(engine.rise)'
        8 |     when: [ "demanded(2 in) > 1 in" ]
          |                       ^^^^
        """,
        Complaints("", "\"demanded(2 in) > 1 in\"", "stop: x"));

    [Fact]
    public void Compile_DemandedOfWords_IsExplained() => Assert.Equal(
        """
        more.yaml:8:23: error PR0409: 'fan_shroud.pieces' is no quantity and takes no demands
        8 |     when: [ "demanded(fan_shroud.pieces) > 1 in" ]
          |                       ^^^^^^^^^^^^^^^^^
          = declared here: shop.yaml:39:3
        """,
        Complaints("", "\"demanded(fan_shroud.pieces) > 1 in\"", "stop: x"));

    [Fact]
    public void Compile_AnyOfAspect_IsExplained() => Assert.Equal(
        """
        more.yaml:8:18: error PR0309: 'any' takes the name of a kind, as in 'any(oil_cooler)'
        8 |     when: [ "any(oil_cooler.place)" ]
          |                  ^^^^^^^^^^^^^^^^
        """,
        Complaints("", "\"any(oil_cooler.place)\"", "stop: x"));

    [Fact]
    public void Compile_AnyOfUnknownKind_IsExplained() => Assert.Equal(
        """
        more.yaml:8:18: error PR0201: there is no kind 'oil_coler'; did you mean 'oil_cooler'?
        8 |     when: [ "any(oil_coler)" ]
          |                  ^^^^^^^^^
        """,
        Complaints("", "\"any(oil_coler)\"", "stop: x"));

    [Fact]
    public void Compile_AtStartInsideExpression_IsExplained() => Assert.Equal(
        """
        more.yaml:8:33: error PR0307: 'at_start(...)' is an entry of its own in 'when' and cannot stand inside an expression
        8 |     when: [ "oil_pan.dented and at_start(oil_pan.place is off)" ]
          |                                 ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
        """,
        Complaints("", "\"oil_pan.dented and at_start(oil_pan.place is off)\"", "stop: x"));

    [Fact]
    public void Compile_AtStartWithoutState_IsExplained() => Assert.Equal(
        """
        more.yaml:8:23: error PR0405: expected a state condition, as in 'engine.height is raised'
        8 |     when: [ "at_start(oil_pan.dented)" ]
          |                       ^^^^^^^^^^^^^^
        """,
        Complaints("", "\"at_start(oil_pan.dented)\"", "stop: x"));

    [Fact]
    public void Compile_AtStartOfFact_IsExplained() => Assert.Equal(
        """
        more.yaml:8:23: error PR0310: 'oil_pan.dented' is a fact, an aspect is due here
        8 |     when: [ "at_start(oil_pan.dented is yes)" ]
          |                       ^^^^^^^^^^^^^^
        """,
        Complaints("", "\"at_start(oil_pan.dented is yes)\"", "stop: x"));

    [Fact]
    public void Compile_AtStartOfTwo_IsExplained() => Assert.Equal(
        """
        more.yaml:8:14: error PR0309: 'at_start' takes 1 argument, here are 2
        8 |     when: [ "at_start(oil_pan.place is off, oil_pan)" ]
          |              ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
        """,
        Complaints("", "\"at_start(oil_pan.place is off, oil_pan)\"", "stop: x"));

    [Fact]
    public void Compile_RelationOfFact_IsExplained() => Assert.Equal(
        """
        more.yaml:8:21: error PR0309: 'covers' takes the name of a part
        8 |     when: [ "covers(oil_pan.drop, oil_pan)" ]
          |                     ^^^^^^^^^^^^
        """,
        Complaints("", "\"covers(oil_pan.drop, oil_pan)\"", "stop: x"));
}
