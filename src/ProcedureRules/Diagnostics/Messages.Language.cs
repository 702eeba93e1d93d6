namespace ProcedureRules.Diagnostics;

/// <summary>PR03xx: expressions, conditions and texts with braces.</summary>
internal static partial class Messages
{
    private static readonly DiagnosticCode UnexpectedCode = Declare(
        "PR0301",
        "Something else was expected at this place of an expression",
        "Write what the message names; look at the word before it, too.",
        "oil_pan.drop_available <");

    private static readonly DiagnosticCode ForeignOperatorCode = Declare(
        "PR0302",
        "An operator of another language",
        "Write the operator that the message names.",
        "oil_pan.gasket == cork");

    private static readonly DiagnosticCode FigureCode = Declare(
        "PR0303",
        "A figure or its unit cannot be read",
        "Write a number and a unit, such as 1 1/4 in or 0.020..0.025 in.",
        "oil_pan.drop_available < 2 inn");

    private static readonly DiagnosticCode TooMuchCode = Declare(
        "PR0304",
        "An expression is too long or too deep",
        "Give a part of it a name: a derived fact that another rule sets.",
        "... (oil_pan.dented) ...");

    private static readonly DiagnosticCode BracesCode = Declare(
        "PR0305",
        "Braces of a text that do not match",
        "Write {expression}, and {{ or }} for a brace itself.",
        "because: \"Lower the {oil_pan\"");

    private static readonly DiagnosticCode MismatchCode = Declare(
        "PR0306",
        "Two values that do not go together",
        "Compare or reckon with values of one kind; give a number its unit.",
        "oil_pan.drop_available < engine.oil_pressure");

    private static readonly DiagnosticCode WrongTypeCode = Declare(
        "PR0307",
        "An expression of another type than the one that is due",
        "Write an expression of the type that the message names.",
        "oil_pan.drop_available");

    private static readonly DiagnosticCode UnknownWordCode = Declare(
        "PR0308",
        "A word that is none of a fact's words",
        "Use one of the words of the fact.",
        "fan_shroud.pieces is onepiece");

    private static readonly DiagnosticCode ArgumentsCode = Declare(
        "PR0309",
        "A function, relation or operation with arguments that it does not take",
        "Give it what the message names.",
        "min(2 in) < oil_pan.drop_available");

    private static readonly DiagnosticCode MemberCode = Declare(
        "PR0310",
        "A part has no fact or aspect of this name",
        "Correct the name, or define the fact or aspect.",
        "oil_pan.drop_avialable < 2 in");

    private static readonly DiagnosticCode HostFunctionCode = Declare(
        "PR0311",
        "A function of the embedding program has failed",
        "Mend the function; until then its value counts as unknown.",
        "spring_rate(oil_pan.drop_available) < 2");

    public static Diagnostic Unexpected(SourceSpan span, string expected, string found) =>
        UnexpectedCode.At(span, $"expected {expected}, found {found}");

    public static Diagnostic ChainedComparison(SourceSpan span) =>
        UnexpectedCode.At(span, "comparisons cannot be chained: write 'a < b and b < c'");

    public static Diagnostic ForeignOperator(SourceSpan span, string found, string ours) =>
        ForeignOperatorCode.At(span, $"{Quote(found)} is no operator here; write {Quote(ours)}") with { Suggestion = ours };

    public static Diagnostic WrongFigure(SourceSpan span, string fault, string? suggestion) => suggestion is null
        ? FigureCode.At(span, fault)
        : FigureCode.At(span, $"{fault}; did you mean {Quote(suggestion)}?") with { Suggestion = suggestion };

    public static Diagnostic DecimalComma(SourceSpan span, string figure) =>
        FigureCode.At(span, $"a comma is no decimal point; write {Quote(figure)}") with { Suggestion = figure };

    public static Diagnostic UnknownUnit(SourceSpan span, string word, string? nearest) =>
        WrongFigure(span, $"{Quote(word)} is no unit and no operator", nearest);

    public static Diagnostic SnippetTooLong(SourceSpan span, int most) =>
        TooMuchCode.At(span, $"this is too long: at most {Count(most, "character")}");

    public static Diagnostic NestedTooDeep(SourceSpan span, int most) =>
        TooMuchCode.At(span, $"this is nested too deep: at most {Count(most, "level")}");

    public static Diagnostic OpenBrace(SourceSpan span) =>
        BracesCode.At(span, "this brace is not closed; a brace itself is written '{{'");

    public static Diagnostic StrayBrace(SourceSpan span) =>
        BracesCode.At(span, "this brace closes nothing; a brace itself is written '}}'");

    public static Diagnostic EmptyBraces(SourceSpan span) => BracesCode.At(span, "expected an expression between the braces, found nothing");

    public static Diagnostic Mismatch(
        SourceSpan span, string why, string left, string right, (SourceSpan Span, string Name)? leftFact, (SourceSpan Span, string Name)? rightFact)
    {
        var diagnostic = MismatchCode.At(span, why) with { Label = $"left is {left}, right is {right}" };
        if (leftFact is { } a) diagnostic = diagnostic.Note($"{Quote(a.Name)} is declared here", a.Span);
        return rightFact is { } b && b != leftFact ? diagnostic.Note($"{Quote(b.Name)} is declared here", b.Span) : diagnostic;
    }

    public static Diagnostic MixedArguments(SourceSpan span, string function, string first, string other) =>
        MismatchCode.At(span, $"the values of {Quote(function)} must be of one kind: {first} stands before, this is {other}");

    public static Diagnostic WrongValue(SourceSpan span, string what, string due, string found, SourceSpan declared)
    {
        var diagnostic = MismatchCode.At(span, $"{what} takes {due}, this is {found}");
        return declared.File is null ? diagnostic : diagnostic.Note("declared here", declared);
    }

    public static Diagnostic WrongArgument(SourceSpan span, string function, string parameter, string due, string found) =>
        MismatchCode.At(span, $"{Quote(parameter)} of {Quote(function)} is {due}, this is {found}");

    public static Diagnostic QuantityDue(SourceSpan span, string found) => WrongTypeCode.At(span, $"expected a quantity, this is {found}");

    public static Diagnostic ConditionDue(SourceSpan span, string found) => WrongTypeCode.At(span, $"expected a condition, this is {found}");

    public static Diagnostic NoSign(SourceSpan span, string found) => WrongTypeCode.At(span, $"a sign has no meaning for {found}");

    public static Diagnostic PartAsValue(SourceSpan span, string name) =>
        WrongTypeCode.At(span, $"{Quote(name)} is a part or a step and has no value of its own; name one of its facts, as in '{name}.fact'");

    public static Diagnostic WordAlone(SourceSpan span, string word) =>
        WrongTypeCode.At(span, $"{Quote(word)} is a word of a fact and stands only right of 'is', or where such a word is due");

    public static Diagnostic TextCompared(SourceSpan span) =>
        WrongTypeCode.At(span, "a free text is shown and never reasoned with; declare the words that it can be");

    public static Diagnostic WordsForFigure(SourceSpan span, string found) =>
        WrongTypeCode.At(span, $"{found} is never one of some words; write a figure or a range, as in 'is 1..2 in'");

    public static Diagnostic StateInExpression(SourceSpan span, string path) => WrongTypeCode
        .At(span, $"{Quote(path)} is a state, which changes during the work, and cannot stand inside an expression")
        .Note("write it as an entry of its own in 'when', or as 'at_start(...)' for the state before the work");

    public static Diagnostic AtStartInside(SourceSpan span) =>
        WrongTypeCode.At(span, "'at_start(...)' is an entry of its own in 'when' and cannot stand inside an expression");

    public static Diagnostic UnknownWord(SourceSpan span, string word, IReadOnlyList<string> words)
    {
        var message = Misspelt(UnknownWordCode, span, $"{Quote(word)} is none of the words that are due here", word, words);
        return message.Note($"the words are {Either(words)}");
    }

    public static Diagnostic ArgumentCount(SourceSpan span, string function, string due, int found) =>
        ArgumentsCode.At(span, $"{Quote(function)} takes {due}, here {(found == 1 ? "is" : "are")} {found}");

    public static Diagnostic PartArgumentDue(SourceSpan span, string of) =>
        ArgumentsCode.At(span, $"{Quote(of)} takes the name of a part");

    public static Diagnostic FactDue(SourceSpan span, string of) => ArgumentsCode.At(span, $"{Quote(of)} takes a fact, as in '{of}(engine.rise)'");

    public static Diagnostic KindDue(SourceSpan span, string of, string example) =>
        ArgumentsCode.At(span, $"{Quote(of)} takes the name of a kind, as in {Quote(example)}");

    public static Diagnostic NoSum(SourceSpan span, string found) => WrongTypeCode.At(span, $"{found} cannot be added up; what can be is a length, a mass, a duration and the like");

    public static Diagnostic UnknownMember(SourceSpan span, string kind, string name, IEnumerable<string> known, IEnumerable<string> owners)
    {
        var message = Misspelt(MemberCode, span, $"{Quote(kind)} has no fact or aspect {Quote(name)}", name, known);
        var others = owners.Where(owner => owner != kind).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToList();
        return others.Count == 0 ? message : message.Note($"one of that name belongs to {Either(others, 4)}");
    }

    public static Diagnostic MemberOfStep(SourceSpan span, string step, string member) =>
        MemberCode.At(span, $"{Quote(step)} is a step and has no facts; conditions on steps are written as in '{step} {member} ...'");

    public static Diagnostic AspectInsteadOfFact(SourceSpan span, string path) =>
        MemberCode.At(span, $"{Quote(path)} is an aspect, a fact is due here");

    public static Diagnostic FactInsteadOfAspect(SourceSpan span, string path) =>
        MemberCode.At(span, $"{Quote(path)} is a fact, an aspect is due here");

    public static Diagnostic HostFunctionFailed(SourceSpan span, string function, string why) =>
        HostFunctionCode.At(span, $"the function {Quote(function)} has failed and its value counts as unknown: {why.ReplaceLineEndings(" ")}", Severity.Warning);
}
