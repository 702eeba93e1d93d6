namespace ProcedureRules.Diagnostics;

/// <summary>PR09xx: scenarios and what they expect.</summary>
internal static partial class Messages
{
    private static readonly DiagnosticCode ParameterCode = Declare(
        "PR0901",
        "A parameter of a scenario that a row does not give, or that nothing uses",
        "Give it under 'with' of each row, or correct the spelling; a brace itself is written {{ or }}.",
        "facts: {oil_pan.drop_available: \"{drop}\"}");

    private static readonly DiagnosticCode ExpectationCode = Declare(
        "PR0902",
        "An expectation that cannot be read",
        "Write it in the form that the message names.",
        "expect: [{order: drain_oil then remove_pan}]");

    private static readonly DiagnosticCode NothingExpectedCode = Declare(
        "PR0903",
        "A scenario that expects nothing",
        "Write under 'expect' what the plan must hold, and what it must not.",
        "facts: {oil_pan.dented: yes}");

    private static readonly DiagnosticCode NoSuchWordsCode = Declare(
        "PR0904",
        "Words that no rule says, so that their absence proves nothing",
        "Copy the words from the rule; leave out what it writes in braces.",
        "expect: [{no_warning: Keep hans out}]");

    private static readonly DiagnosticCode ApprovedCode = Declare(
        "PR0905",
        "An approved plan that belongs to no case, or that cannot be read",
        "Print the approved plans anew with 'test --approve held', and read what changes.",
        "== a row that was given another name");

    private static readonly DiagnosticCode CaseCode = Declare(
        "PR0906",
        "A name that no case has",
        "Copy the whole name from what 'test' prints, or the title of the scenario for all of its rows.",
        "test --approve \"a row that was given another name\"");

    public static Diagnostic NoSuchCase(SourceSpan span, string name, IEnumerable<string> known) =>
        Misspelt(CaseCode, span, $"no case and no scenario is called {Quote(name)}", name, known);

    public static Diagnostic NoSuchParameter(SourceSpan span, string name, string row, IEnumerable<string> given) => Misspelt(
        ParameterCode, span, row.Length == 0 ? $"there are no rows that give {Quote(name)}" : $"row {Quote(row)} gives no {Quote(name)}", name, given);

    public static Diagnostic UnusedParameter(SourceSpan span, string name) =>
        ParameterCode.At(span, $"nothing uses {Quote(name)}").Note($"write {{{name}}} where its value is due");

    public static Diagnostic StepForm(SourceSpan span, string text) =>
        ExpectationCode.At(span, $"{Quote(text)} is not a step: write 'drain_oil', 'drain_oil(engine)' for one part, or 'drain_oil#2' for the second time");

    public static Diagnostic StepOnOtherKind(SourceSpan span, string operation, string due, string part, string kind) =>
        ExpectationCode.At(span, $"{Quote(operation)} is done on a part of the kind {Quote(due)}; {Quote(part)} is a {Quote(kind)}");

    public static Diagnostic ExpectedOrderForm(SourceSpan span, string text) =>
        ExpectationCode.At(span, $"{Quote(text)} is not an order: write 'drain_oil before remove_pan'");

    public static Diagnostic CauseForm(SourceSpan span, string text) =>
        ExpectationCode.At(span, $"{Quote(text)} is not a cause of a part: write 'worn_out(starter)'");

    public static Diagnostic QuestionForm(SourceSpan span, string text) =>
        ExpectationCode.At(span, $"{Quote(text)} is nothing that is asked for: write 'oil_pan.drop_available', 'covers(dust_cover, oil_pan)' or 'part oil_cooler'");

    public static Diagnostic DurationForm(SourceSpan span, string text, string fault) =>
        ExpectationCode.At(span, $"{Quote(text)} is no time: {fault}");

    public static Diagnostic StartForm(SourceSpan span, string text) =>
        ExpectationCode.At(span, $"{Quote(text)} is no date and time such as 2026-11-25T08:00");

    public static Diagnostic DemandOnWords(SourceSpan span, string path) =>
        ExpectationCode.At(span, $"{Quote(path)} takes words: demands are on quantities");

    public static Diagnostic NothingExpected(SourceSpan span) => NothingExpectedCode.At(span, "this scenario expects nothing");

    public static Diagnostic NoSuchWords(SourceSpan span, string words, string? saying)
    {
        var mistake = NoSuchWordsCode.At(span, $"no rule says {Quote(words)}: that the plan does not say it proves nothing");
        return saying is null ? mistake : mistake.Note($"a {saying} says it");
    }

    public static Diagnostic ApprovedOfNothing(SourceSpan span, string name) => ApprovedCode.At(span, $"no case has a plan called {Quote(name)}");

    public static Diagnostic ApprovedWithoutScenarios(SourceSpan span) => ApprovedCode.At(span, "there are no scenarios that these plans could be of");

    public static Diagnostic ApprovedTwice(SourceSpan span, string name) => ApprovedCode.At(span, $"the plan {Quote(name)} is here twice");

    public static Diagnostic ApprovedAgainstNothing(SourceSpan span, string name, string like) =>
        ApprovedCode.At(span, $"the plan {Quote(name)} is told against {Quote(like)}, which is not told in full before it");
}
