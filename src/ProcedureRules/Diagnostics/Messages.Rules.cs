namespace ProcedureRules.Diagnostics;

/// <summary>PR04xx: rules and tables.</summary>
internal static partial class Messages
{
    private static readonly DiagnosticCode VariableCode = Declare(
        "PR0401",
        "A name that does not stand for a part or step here",
        "Declare it under 'for', or name a kind of part.",
        "when: [ s on oil_pan ]");

    private static readonly DiagnosticCode UnboundCode = Declare(
        "PR0402",
        "A variable that no condition binds",
        "Add a relation or a condition on a step that binds it, or name the kind itself.",
        "for: {cover: part}\nwhen: [ oil_pan.dented is yes ]");

    private static readonly DiagnosticCode ReservedCode = Declare(
        "PR0403",
        "A variable with the name of an operator or a function",
        "Choose another name.",
        "for: {min: part}");

    private static readonly DiagnosticCode KindCode = Declare(
        "PR0404",
        "A part of the wrong kind",
        "Name a part of the kind that the message names.",
        "then: [{do: remove_starter(oil_pan)}]");

    private static readonly DiagnosticCode StateCode = Declare(
        "PR0405",
        "A state condition is due",
        "Write PART.ASPECT is STATE.",
        "then: [{end: engine_raised}]");

    private static readonly DiagnosticCode MomentCode = Declare(
        "PR0406",
        "A state guards a conclusion that has no moment",
        "Write at_start(...) for the state before the work, or let the conclusion be about a step.",
        "when: [ engine.height is raised ]\nthen: [{stop: Lower the engine first.}]");

    private static readonly DiagnosticCode StepCode = Declare(
        "PR0407",
        "It is not clear which step a conclusion is about",
        "Name the step as 'at', or declare one under 'for' and bind it.",
        "then: [{detail: Wear gloves.}]");

    private static readonly DiagnosticCode ConclusionCode = Declare(
        "PR0408",
        "A conclusion that is not written as it should be",
        "Write it in the form that the message names.",
        "then: [{do: remove_starter}]");

    private static readonly DiagnosticCode DemandCode = Declare(
        "PR0409",
        "A demand on a fact that takes none, or a value for one that takes only demands",
        "Demands are on quantities; a fact with 'demand: yes' takes 'at_least' and 'at_most' only.",
        "then: [{at_least: {oil_pan.gasket: cork}}]");

    private static readonly DiagnosticCode NeverCode = Declare(
        "PR0410",
        "Something that can never come about",
        "Look at the ranges and words that the facts are declared with, and at the other conditions.",
        "oil_pan.drop_available > 20 in");

    private static readonly DiagnosticCode AlwaysCode = Declare(
        "PR0411",
        "A condition, or a part of one, that decides nothing",
        "Leave it out, or correct the range, the figure or the words.",
        "oil_pan.drop_available >= 0 in");

    private static readonly DiagnosticCode RingCode = Declare(
        "PR0412",
        "Rules that need to know what they conclude",
        "Break the ring: let one of the facts be asked for, or derive it from something else.",
        "then: [{set: {oil_pan.drop_needed: oil_pan.drop_needed + 1 in}}]");

    private static readonly DiagnosticCode TableCode = Declare(
        "PR0413",
        "A table with a cell or an input that it cannot have",
        "Write words joined by '|', a figure, a comparison, a range, or '-'.",
        "rows: [[ \"< 2 in\", 15 min ]]");

    private static readonly DiagnosticCode GapCode = Declare(
        "PR0414",
        "A table with a gap",
        "Add the missing row, or widen one.",
        "rows: [[none, 0 min], [light, 15 min]]");

    private static readonly DiagnosticCode OverlapCode = Declare(
        "PR0415",
        "A table with rows that overlap",
        "Let each combination of inputs have one row.",
        "rows: [[none, 0 min], [\"-\", 15 min]]");

    private static readonly DiagnosticCode LawCode = Declare(
        "PR0416",
        "A law that says what no plan can be held to",
        "Let it need a state, order steps, forbid, wait or show a caution; what it works out belongs into a rule.",
        "laws: [{law: a pan is wiped, for: {s: step}, when: [s on oil_pan], then: [{tool: rag}], because: x, basis: common practice}]");

    public static Diagnostic StepInsteadOfPart(SourceSpan span, string name) => VariableCode.At(span, $"{Quote(name)} is a step, a part is due here");

    public static Diagnostic NoPlanCanBeHeldTo(SourceSpan span, string keyword, IEnumerable<string> judged) =>
        LawCode.At(span, $"a law concludes {Either(judged, most: 16)}, and not {Quote(keyword)}");

    public static Diagnostic PartInsteadOfStep(SourceSpan span, string name) => VariableCode.At(span, $"{Quote(name)} is a part, a step is due here");

    public static Diagnostic NotAStep(SourceSpan span, string name, IEnumerable<string> steps)
    {
        var message = Misspelt(VariableCode, span, $"{Quote(name)} is no step of this rule", name, steps);
        return message.Suggestion is null ? message.Note($"steps are declared under 'for', as in 'for: {{{name}: step}}'") : message;
    }

    public static Diagnostic KindInText(SourceSpan span, string kind, IEnumerable<string> known)
    {
        var names = known.ToList();
        return VariableCode.At(span, $"no condition here is about {Quote(kind)}, so a text cannot show what is known of it")
            .Note(names.Count == 0 ? "no part can be named here" : $"what can be named here: {Either(names)}");
    }

    public static Diagnostic UnboundPart(SourceSpan span, string name, string kind) => UnboundCode
        .At(span, $"nothing binds {Quote(name)}: it stands in no relation, step or job")
        .Note($"for each part of the kind, write {Quote(kind)} itself instead of a variable");

    public static Diagnostic UnboundStep(SourceSpan span, string name) => UnboundCode
        .At(span, $"nothing binds {Quote(name)}, so the rule would be about every step")
        .Note($"add a condition such as '{name} on oil_pan', '{name} does OPERATION' or '{name} place under'");

    public static Diagnostic ReservedName(SourceSpan span, string name) =>
        ReservedCode.At(span, $"{Quote(name)} is a word of the language and cannot name a variable");

    public static Diagnostic WrongKind(SourceSpan span, string of, string due, string found, SourceSpan declared) =>
        KindCode.At(span, $"{of} takes a part of the kind {Quote(due)}, this is {Quote(found)}").Note("declared here", declared);

    public static Diagnostic NotAState(SourceSpan span) => StateCode.At(span, "expected a state condition, as in 'engine.height is raised'");

    public static Diagnostic StateDue(SourceSpan span, string path, IReadOnlyList<string> states) =>
        StateCode.At(span, $"expected a state of {Quote(path)}").Note($"its states are {Either(states)}");

    public static Diagnostic MomentWithoutStep(SourceSpan span, string conclusion, bool canHaveMoment, SourceSpan conclusionSpan) => MomentCode
        .At(span, canHaveMoment
            ? $"a state can guard {Quote(conclusion)} only where it is about a step"
            : $"a state changes during the work and cannot guard {Quote(conclusion)}, which has no moment")
        .Note("for the state before the work, write 'at_start(...)' round it")
        .Note("the conclusion is here", conclusionSpan);

    public static Diagnostic NoStep(SourceSpan span, string conclusion) => StepCode
        .At(span, $"{Quote(conclusion)} is about a step, and the rule has none")
        .Note("declare one under 'for', as in 'for: {s: step}', and bind it in 'when'");

    public static Diagnostic WhichStep(SourceSpan span, string conclusion, IEnumerable<string> steps) =>
        StepCode.At(span, $"which step is {Quote(conclusion)} about: {Either(steps)}? Name it as 'at'");

    public static Diagnostic WorkDue(SourceSpan span) =>
        ConclusionCode.At(span, "expected an operation on a part, as in 'remove_starter(starter)'");

    public static Diagnostic CauseDue(SourceSpan span) =>
        ConclusionCode.At(span, "expected a cause of a part, as in 'worn_out(starter)'");

    public static Diagnostic RelationDue(SourceSpan span) =>
        ConclusionCode.At(span, "expected a relation of two parts, as in 'covers(dust_cover, oil_pan)'");

    public static Diagnostic OrderOfOne(SourceSpan span, string step) => ConclusionCode.At(span, $"{Quote(step)} cannot come before itself");

    public static Diagnostic OneOfInOption(SourceSpan span) =>
        ConclusionCode.At(span, "a 'one_of' cannot stand inside an option of another; write its ways as options of the outer one");

    public static Diagnostic WaitFromWhere(SourceSpan span, bool isBoth) => ConclusionCode.At(
        span, isBoth ? "a wait starts at a step ('from') or at an event before the job ('since'), not at both" : "the wait does not say from when: 'from' or 'since' is missing");

    public static Diagnostic WaitHowLong(SourceSpan span) =>
        ConclusionCode.At(span, "the wait does not say how long: 'least' or 'most' is missing");

    public static Diagnostic SinceNoDuration(SourceSpan span, string fact, SourceSpan declared) => ConclusionCode
        .At(span, $"'since' takes a fact that says how long ago something was, {Quote(fact)} is no duration").Note("declared here", declared);

    public static Diagnostic NoDemands(SourceSpan span, string fact, SourceSpan declared) =>
        DemandCode.At(span, $"{Quote(fact)} is no quantity and takes no demands").Note("declared here", declared);

    public static Diagnostic OnlyDemands(SourceSpan span, string fact, SourceSpan declared) =>
        DemandCode.At(span, $"{Quote(fact)} only collects demands: write 'at_least' or 'at_most'").Note("declared here", declared);

    public static Diagnostic NeverHolds(SourceSpan span, string condition) =>
        NeverCode.At(span, $"{Quote(condition)} can never hold, so the rule can never fire");

    public static Diagnostic CheckNeverPasses(SourceSpan span, string condition) =>
        NeverCode.At(span, $"{Quote(condition)} can never hold, so the check can never be passed");

    public static Diagnostic OptionNeverOpen(SourceSpan span, string condition) =>
        NeverCode.At(span, $"{Quote(condition)} can never hold, so this way is never open");

    public static Diagnostic Contradiction(SourceSpan span, string what, SourceSpan first) => NeverCode
        .At(span, $"this and another condition on {Quote(what)} cannot hold together, so the rule can never fire").Note("the other is here", first);

    public static Diagnostic StepNeverIs(SourceSpan span, string first, string second, SourceSpan firstSpan) => NeverCode
        .At(span, $"no step is both {Quote(first)} and {Quote(second)}, so the rule can never fire").Note("the other is here", firstSpan);

    public static Diagnostic AlwaysHolds(SourceSpan span, string condition) =>
        AlwaysCode.At(span, $"{Quote(condition)} always holds and decides nothing", Severity.Warning);

    public static Diagnostic PartNeverHolds(SourceSpan span, string condition) =>
        AlwaysCode.At(span, $"{Quote(condition)} can never hold and decides nothing", Severity.Warning);

    public static Diagnostic RuleRing(SourceSpan span, string what, IReadOnlyList<string> rules, IEnumerable<(SourceSpan Span, string Rule)> others)
    {
        var message = rules.Count == 1
            ? $"the rule {Quote(rules[0])} needs to know {Quote(what)} to conclude it"
            : $"these rules need to know {Quote(what)} to conclude it: {string.Join(", ", rules.Select(Quote))}";
        return others.Where(other => other.Rule != rules[0])
            .Aggregate(RingCode.At(span, message), (all, other) => all.Note($"by way of {Quote(other.Rule)}", other.Span));
    }

    public static Diagnostic TableInput(SourceSpan span, string fact, bool isDemand) => TableCode.At(
        span, isDemand ? $"{Quote(fact)} only collects demands and cannot select a row" : $"{Quote(fact)} is a free text and cannot select a row");

    public static Diagnostic WrongCell(SourceSpan span, string fact, string due, SourceSpan declared) =>
        TableCode.At(span, $"this cell cannot be compared with {Quote(fact)}, which is {due}").Note("declared here", declared);

    public static Diagnostic CellBound(SourceSpan span) => TableCode.At(span, "a comparison in a cell takes one figure, not a range");

    public static Diagnostic TableTooBig(SourceSpan span, int most) =>
        TableCode.At(span, $"this table is too big to check: more than {Count(most, "combination")} of inputs; split it");

    public static Diagnostic TableGap(SourceSpan span, IReadOnlyList<string> gaps) => GapCode.At(
        span, $"no row is for {string.Join("; nor for ", gaps.Take(3))}{(gaps.Count > 3 ? $"; and {Count(gaps.Count - 3, "combination")} more" : "")}");

    public static Diagnostic TableOverlap(SourceSpan span, int first, int second, string where, SourceSpan firstSpan) =>
        OverlapCode.At(span, $"rows {first} and {second} are both for {where}").Note($"row {first} is here", firstSpan);
}
