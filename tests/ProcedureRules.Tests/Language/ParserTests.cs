using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using ProcedureRules.Diagnostics;
using ProcedureRules.Language.Syntax;
using ProcedureRules.Packs;
using Xunit;

namespace ProcedureRules.Tests.Language;

public class ParserTests
{
    [Property(MaxTest = 2000)]
    public Property Expression_Printed_ParsesToTheSameTree() => Prop.ForAll(SyntaxGenerators.Expression.ToArbitrary(), expression =>
    {
        var text = SyntaxPrinter.Print(expression);
        var (again, complaints) = Parse(text, Parser.Expression);
        return (expression.Equals(again)).Label($"{text}\n{again}\n{complaints}");
    });

    [Property(MaxTest = 500)]
    public Property Condition_Printed_ParsesToTheSameTree() => Prop.ForAll(SyntaxGenerators.Condition.ToArbitrary(), condition =>
    {
        var text = SyntaxPrinter.Print(condition);
        var (again, complaints) = Parse(text, Parser.Condition);
        return (condition.Equals(again)).Label($"{text}\n{again}\n{complaints}");
    });

    [Property(MaxTest = 2000)]
    public Property Anything_Parsed_GivesATreeOrComplaintsAndNeverThrows() => Prop.ForAll(SyntaxGenerators.Text.ToArbitrary(), text =>
        IsAnswered(text, Parser.Expression) && IsAnswered(text, Parser.Condition) && IsAnswered(text, Parser.Template)
        && IsAnswered(text, Parser.Cell) && IsAnswered(text, Parser.Order) && IsAnswered(text, Parser.Path));

    [Property(MaxTest = 1000)]
    public Property Template_Parsed_PrintsToATextThatParsesTheSame() => Prop.ForAll(SyntaxGenerators.Text.ToArbitrary(), text =>
        Parse(text, Parser.Template).Node is not { } template
        || template.Equals(Parse(SyntaxPrinter.Print(template), Parser.Template).Node));

    [Theory]
    [InlineData("-", "-")]
    [InlineData("light|heavy", "light | heavy")]
    [InlineData("light or heavy", "light | heavy")]
    [InlineData("<2 in", "< 50.8 mm")]
    [InlineData("1 in .. 2 in", "25.4..50.8 mm")]
    [InlineData("yes", "yes")]
    public void Cell_OfEachForm_IsRead(string text, string printed) => Assert.Equal(printed, SyntaxPrinter.Print(Parse(text, Parser.Cell).Node!));

    [Theory]
    [InlineData("a or b and not c < 1 in", "a or b and not c < 25.4 mm")]
    [InlineData("(a or b) and c", "(a or b) and c")]
    [InlineData("((a)) - (b - c) - d", "a - (b - c) - d")]
    [InlineData("a.b is_not [c, d]", "a.b is not [c, d]")]
    [InlineData("not (a and b)", "not (a and b)")]
    [InlineData("a - -5 kPa", "a - -5 kPa")]
    [InlineData("a-5 kPa", "a - 5 kPa")]
    [InlineData("-(5 kPa)", "-(5 kPa)")]
    [InlineData("3 / 8 in", "3 / 203.2 mm")]
    public void Expression_WithPrecedence_IsBracketedAsLittleAsPossible(string text, string printed)
    {
        var parsed = Parse(text, Parser.Expression).Node!;
        Assert.Equal(printed, SyntaxPrinter.Print(parsed));
    }

    [Fact]
    public void Expression_NestedBeyondTheBound_IsRefused()
    {
        const string Opening = "(not -min(";
        var text = string.Concat(Enumerable.Repeat(Opening, 400));
        Assert.Equal("error PR0304: this is nested too deep: at most 64 levels\n", Parse(text, Parser.Expression).Complaints);
    }

    [Fact]
    public void Expression_LongerThanTheBound_IsRefused() =>
        Assert.Equal("error PR0304: this is too long: at most 4000 characters\n", Parse(new string('a', 4001), Parser.Expression).Complaints);

    [Fact]
    public void Expression_AsLongAsTheBound_IsParsedWithoutExhaustingTheStack()
    {
        var text = string.Concat(Enumerable.Repeat("1+", 1999)) + "1";
        Assert.Equal("", Parse(text, Parser.Expression).Complaints);
        Assert.StartsWith("1 + 1", SyntaxPrinter.Print(Parse(text, Parser.Expression).Node!), StringComparison.Ordinal);
    }

    private static (T? Node, string Complaints) Parse<T>(string text, Func<Snippet, DiagnosticBag, T?> parse)
    {
        var bag = new DiagnosticBag();
        return (parse(new Snippet(text), bag), bag.ToLines());
    }

    private static bool IsAnswered<T>(string text, Func<Snippet, DiagnosticBag, T?> parse)
    {
        var (node, complaints) = Parse(text, parse);
        return node is null == complaints.Length > 0;
    }
}
