using ProcedureRules.Diagnostics;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Quantities;
using Xunit;
using static ProcedureRules.Tests.Language.GivenLanguage;

namespace ProcedureRules.Tests.Language;

public class FunctionRegistryTests
{
    private static readonly FunctionDefinition Double = new()
    {
        Name = "twice",
        Parameters = [new("travel", Dimension.Length)],
        Returns = Dimension.Length,
        Documentation = "Two times a length.",
        Implementation = arguments => Quantity.Number(2) * arguments[0],
    };

    [Fact]
    public void With_AFunctionOfTheHost_LetsPacksCallIt()
    {
        var (truth, failures) = Evaluate(Double, "twice(oil_pan.drop) > 3 in", "2 in");
        Assert.Equal(Truth.Yes, truth);
        Assert.Empty(failures);
    }

    [Fact]
    public void Evaluate_WhenTheFunctionThrows_IsUnknownAndReported()
    {
        var broken = new FunctionDefinition
        {
            Name = "twice",
            Parameters = Double.Parameters,
            Returns = Dimension.Length,
            Documentation = "",
            Implementation = _ => throw new InvalidOperationException("no spring"),
        };
        var (truth, failures) = Evaluate(broken, "twice(oil_pan.drop) > 3 in", "2 in");
        Assert.Equal(Truth.Unknown, truth);
        Assert.Equal(
            "more.yaml:8:14: warning PR0311: the function 'twice' has failed and its value counts as unknown: no spring",
            Assert.Single(failures).ToLine());
    }

    [Fact]
    public void Evaluate_WhenTheFunctionGivesAnotherDimension_IsUnknownAndReported()
    {
        var wrong = new FunctionDefinition
        {
            Name = "twice",
            Parameters = Double.Parameters,
            Returns = Dimension.Length,
            Documentation = "",
            Implementation = _ => Quantity.Of(2, "psi"),
        };
        var (truth, failures) = Evaluate(wrong, "twice(oil_pan.drop) > 3 in", "2 in");
        Assert.Equal(Truth.Unknown, truth);
        Assert.EndsWith("it gave a gauge pressure instead of a length", Assert.Single(failures).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("twice(engine.oil) > 3 in", "PR0306: 'travel' of 'twice' is a length, this is a gauge pressure")]
    [InlineData("twice(oil_pan.drop, 1 in) > 3 in", "PR0309: 'twice' takes 1 argument, here are 2")]
    [InlineData("twise(oil_pan.drop) > 3 in", "PR0201: there is no function or relation 'twise'; did you mean 'twice'?")]
    public void Compile_WithAWrongCall_IsComplainedAbout(string expression, string complaint)
    {
        var (_, bag) = Compile(RuleText("", $"\"{expression}\"", "stop: x"), FunctionRegistry.Standard.With(Double));
        Assert.EndsWith(complaint, bag.Ordered().First(diagnostic => diagnostic.Severity == Severity.Error).ToLine(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("min")]
    [InlineData("at_start")]
    [InlineData("Twice")]
    [InlineData("")]
    [InlineData("2x")]
    public void With_ATakenOrMalformedName_IsRefused(string name) => Assert.Throws<ArgumentException>(() => FunctionRegistry.Standard.With(new()
    {
        Name = name,
        Parameters = [],
        Returns = Dimension.Length,
        Documentation = "",
        Implementation = _ => default,
    }));

    [Fact]
    public void Documentation_OfAll_NamesEveryFunctionOnce()
    {
        var registry = FunctionRegistry.Standard.With(Double);
        Assert.Equal(["abs", "allowed", "any", "at_start", "count", "demanded", "greatest", "if", "least", "max", "min", "sum", "twice", "where_greatest", "where_least"], registry.Documentation.Keys.Order(StringComparer.Ordinal));
        Assert.Equal("twice(travel: length): Two times a length.", registry.Documentation["twice"]);
        Assert.DoesNotContain("twice", FunctionRegistry.Standard.Documentation.Keys);
    }

    [Theory]
    [InlineData("stretch(one_piece, 1 in) is 2 in", Truth.Yes)]
    [InlineData("stretch(fan_shroud.pieces, 1 in) is 2..3 in", Truth.Yes)]
    [InlineData("stretch(fan_shroud.pieces, 1 in) is 2 in", Truth.Unknown)]
    public void Evaluate_OfAFunctionOfWords_IsTheHullOverTheWordsStillOpen(string expression, Truth expected)
    {
        var (truth, failures) = Evaluate(Stretch("one_piece", "two_piece", "none"), expression, "2 in");
        Assert.Equal(expected, truth);
        Assert.Empty(failures);
    }

    [Fact]
    public void Evaluate_WhereAWordIsOpenThatTheFunctionDoesNotKnow_IsAnything() =>
        Assert.Equal(Truth.Unknown, Evaluate(Stretch("one_piece"), "stretch(fan_shroud.pieces, 1 in) < 100 in", "2 in").Truth);

    [Theory]
    [InlineData("stretch(one_peace, 1 in) > 3 in", "words that are due here; did you mean 'one_piece'?")]
    [InlineData("stretch(fan_shroud.fixed, 1 in) > 3 in", "'kind' of 'stretch' is one of the words 'one_piece' or 'two_piece', this is a yes or no")]
    [InlineData("stretch(1 in, 1 in) > 3 in", "'kind' of 'stretch' is one of the words 'one_piece' or 'two_piece', this is a length")]
    public void Compile_WithAWrongWord_IsComplainedAbout(string expression, string complaint)
    {
        var (_, bag) = Compile(RuleText("", $"\"{expression}\"", "stop: x"), FunctionRegistry.Standard.With(Stretch("one_piece", "two_piece")));
        Assert.EndsWith(complaint, bag.Ordered().First(diagnostic => diagnostic.Severity == Severity.Error).ToLine(), StringComparison.Ordinal);
    }

    private static FunctionDefinition Stretch(params string[] words) => new()
    {
        Name = "stretch",
        Parameters = [new("kind", words), new("travel", Dimension.Length)],
        Returns = Dimension.Length,
        Documentation = "",
        Implementation = arguments => Quantity.Number(arguments.Word("kind") == "one_piece" ? 2 : 3) * arguments["travel"],
    };

    private static (Truth Truth, List<Diagnostic> Failures) Evaluate(FunctionDefinition function, string expression, string drop)
    {
        var failures = new List<Diagnostic>();
        var (rules, bag) = Compile(RuleText("", $"\"{expression}\"", "stop: x"), FunctionRegistry.Standard.With(function).WithFailures(failures.Add));
        Assert.False(bag.HasErrors, bag.ToSnippets());
        failures.Clear(); // the check for conditions that never hold has called it, too
        var beliefs = new SupposedBeliefs().With(rules.Vocabulary, "oil_pan.drop", drop);
        return (rules.Rules[0].Tests[0].Evaluate(beliefs, SupposedBeliefs.Bind(rules, rules.Rules[0])), failures);
    }
}
