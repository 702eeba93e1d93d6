namespace ProcedureRules.Diagnostics;

/// <summary>PR08xx: what the lint finds in packs that load.</summary>
internal static partial class Messages
{
    private static readonly DiagnosticCode NeverFiresCode = Declare(
        "PR0801",
        "A rule that can never fire",
        "Correct a condition, or let something lead to the step it waits for; take the rule away if it is not needed.",
        "for: {s: step}\nwhen: [ s moves battery ]");

    private static readonly DiagnosticCode AlwaysTrueCode = Declare(
        "PR0802",
        "A condition that always holds, whatever is found",
        "Leave it out, or correct it.",
        "when: [ oil_pan.dented is yes or not oil_pan.dented ]");

    private static readonly DiagnosticCode DuplicateCode = Declare(
        "PR0803",
        "A conclusion that another rule draws under the same conditions",
        "Keep one of the two.",
        "when: [ vehicle.to_be_stored is yes ]\nthen: [{end: battery.ground is off}]");

    private static readonly DiagnosticCode ShadowedCode = Declare(
        "PR0804",
        "A conclusion that another rule draws under fewer conditions",
        "Take it away, or give the other rule the condition that tells them apart.",
        "when: [ vehicle.to_be_stored is yes, oil_pan.dented is yes ]\nthen: [{end: battery.ground is off}]");

    private static readonly DiagnosticCode NobodyReadsCode = Declare(
        "PR0805",
        "A conclusion that nothing reads",
        "Write the rule, check or text that uses it, or take it away.",
        "facts: {starter.heavy: {type: yes_no, derived: yes}}\nrules: [{rule: x, when: [starter.mass > 15 kg], then: [{set: {starter.heavy: yes}}], because: x, basis: common practice}]");

    private static readonly DiagnosticCode NobodyAsksCode = Declare(
        "PR0806",
        "A fact that nothing reads, and so nobody asks for",
        "Write the rule that uses it, or take it away.",
        "facts: {starter.colour: {type: text, ask: What colour is it?}}");

    private static readonly DiagnosticCode NoHowCode = Declare(
        "PR0807",
        "A figure or relation that is asked for, and nothing says how it is found",
        "Say under 'how' where to measure it, or where it is written; or name the operation that finds it as 'find'.",
        "facts: {starter.gap: {type: length, range: 0..1 in, ask: What gap has it?}}\nrules: [{rule: x, when: [starter.gap > 0.5 in], then: [{notice: x}], because: x, basis: common practice}]");

    private static readonly DiagnosticCode LosableCautionCode = Declare(
        "PR0808",
        "A caution that is held back while its condition is unknown",
        "Leave 'if_unknown' away from the caution: what protects is said as soon as it may be due. Put the other conclusions of the rule under an 'if_unknown' of their own.",
        "if_unknown: hold\nwhen: [ oil_pan.dented is yes ]\nthen: [{warning: The pan may burst.}]");

    private static readonly DiagnosticCode NoUndoCode = Declare(
        "PR0809",
        "An operation that nothing undoes, or that takes no time",
        "Name the operation that undoes it as 'undo', make the aspect a 'mark', or give it its labour.",
        "operations: {blow_off: {on: oil_pan, text: Blow it off, place: bench, time: 0 min}}\njobs: {clean: {on: oil_pan, text: Clean it, do: [ blow_off(it) ]}}");

    private static readonly DiagnosticCode OrderContradictionCode = Declare(
        "PR0810",
        "Rules that order the same steps the other way round",
        "Take one order away, or give the rules conditions that exclude each other.",
        "for: {s: step, t: step}\nwhen: [ s does fit_starter, t does fit_pan ]\nthen: [{order: s before t}]");

    private static readonly DiagnosticCode NoBasisCode = Declare(
        "PR0811",
        "A figure in an operation that says no basis",
        "Name under 'basis' where the figure comes from, or 'common practice'; a figure of one vehicle is a fact that is asked for.",
        "operations: {pull_plug: {on: oil_pan, text: Pull it, place: under, time: 1 min, detail: [ Tighten to 20 lb.ft. ]}}\njobs: {pull: {on: oil_pan, text: Pull it, do: [ pull_plug(it) ]}}");

    private static readonly DiagnosticCode NearNamesCode = Declare(
        "PR0812",
        "Two names that one slip of the pen makes the same",
        "Rename one of them, so that a slip is told and not taken.",
        "kinds: {starters: {}}");

    private static readonly DiagnosticCode OptionKindCode = Declare(
        "PR0813",
        "A kind that only one option of a choice names: a vehicle without such a part loses the whole choice",
        "Let the options be rules of their own, or bind the part by a condition of the rule; where the others need no choice without it, accept it.",
        "for: {s: step}\nwhen: [ s does remove_pan ]\nthen:\n  - one_of:\n      - {option: a, then: [{need: exhaust.hang is tied_up}]}\n      - {option: b, then: [{detail: x}]}");

    private static readonly DiagnosticCode UnusedNameCode = Declare(
        "PR0814",
        "A name that nothing uses",
        "Use it, or take it away.",
        "causes: {bent: {on: starter, text: It is bent}}");

    private static readonly DiagnosticCode UnneededAcceptCode = Declare(
        "PR0815",
        "A finding is accepted that is not there",
        "Take it out of 'accept'.",
        "kinds: {heat_shield: {accept: {PR0814: sheets name it}}}");

    private static readonly DiagnosticCode ImpliedCode = Declare(
        "PR0816",
        "A condition that follows from another one of its rule",
        "Leave it out, or correct the one it follows from.",
        "for: {s: step, p: oil_pan}\nwhen: [ s on p, s leaves p.place fitted ]");

    private static readonly DiagnosticCode NobodyKeepsCode = Declare(
        "PR0817",
        "A state that is to be kept while another lasts, and that no rule needs",
        "Write a rule by which the steps that lead to the lasting state need the kept one: 'while' alone only forbids that it is missing.",
        "aspects: {oil_pan.hang: {states: [fast, loose], normal: fast, while: {loose: [ exhaust.hang is loose ]}}}");

    public static Diagnostic NobodyKeeps(SourceSpan span, string kept) =>
        NobodyKeepsCode.At(span, $"{Quote(kept)} is to be kept, and no rule needs it", Severity.Warning);

    public static Diagnostic StepNeverComes(SourceSpan span, string step, IEnumerable<string> conditions) => NeverFiresCode.At(
        span, $"this rule never fires: no operation that a plan may hold meets what is said of {Quote(step)}", Severity.Warning)
        .Note($"it has to meet {string.Join(", ", conditions.Select(Quote))}");

    public static Diagnostic NeverTogether(SourceSpan span, IEnumerable<string> conditions) => NeverFiresCode.At(
        span, $"this rule never fires: {string.Join(" and ", conditions.Select(Quote))} never hold together", Severity.Warning);

    public static Diagnostic HoldsWhatever(SourceSpan span, string condition) =>
        AlwaysTrueCode.At(span, $"{Quote(condition)} holds whatever is found", Severity.Warning);

    public static Diagnostic Implied(SourceSpan span, string condition, string ground) =>
        ImpliedCode.At(span, $"{Quote(condition)} follows from {Quote(ground)}", Severity.Warning);

    public static Diagnostic SaidTwice(SourceSpan span, string other, SourceSpan first) => DuplicateCode.At(
        span, $"{Quote(other)} concludes the same under the same conditions", Severity.Warning).Note("here", first);

    public static Diagnostic Shadowed(SourceSpan span, string other, SourceSpan first) => ShadowedCode.At(
        span, $"{Quote(other)} concludes the same under fewer conditions", Severity.Warning).Note("here", first);

    public static Diagnostic NobodyReads(SourceSpan span, string what) => NobodyReadsCode.At(span, $"nothing reads {Quote(what)}", Severity.Warning);

    public static Diagnostic NobodyAsks(SourceSpan span, string fact) =>
        NobodyAsksCode.At(span, $"nothing reads {Quote(fact)}, so nobody is asked for it", Severity.Warning);

    public static Diagnostic NoHow(SourceSpan span, string what) => NoHowCode.At(span, $"{Quote(what)} is asked for, and nothing says how it is found", Severity.Warning);

    public static Diagnostic LosableCaution(SourceSpan span, string word) =>
        LosableCautionCode.At(span, $"this {word} is held back while its condition is unknown", Severity.Warning);

    public static Diagnostic NoUndo(SourceSpan span, string operation, string aspect) =>
        NoUndoCode.At(span, $"{Quote(operation)} takes {Quote(aspect)} out of normal, and no operation undoes it", Severity.Warning);

    public static Diagnostic NoTime(SourceSpan span, string operation) => NoUndoCode.At(span, $"{Quote(operation)} takes no time", Severity.Warning);

    public static Diagnostic OrderContradiction(SourceSpan span, IReadOnlyList<string> operations, IEnumerable<(SourceSpan Span, string Rule)> others) =>
        others.Aggregate(
            OrderContradictionCode.At(span, $"these steps cannot be put in order: {string.Join(" before ", operations.Select(Quote))}", Severity.Warning),
            (all, other) => all.Note($"{Quote(other.Rule)} takes part", other.Span));

    public static Diagnostic NoBasis(SourceSpan span, string figure) =>
        NoBasisCode.At(span, $"{Quote(figure)} stands here, and the operation says no basis", Severity.Warning);

    public static Diagnostic NearNames(SourceSpan span, string what, string name, string other, SourceSpan first) => NearNamesCode.At(
        span, $"the {what} {Quote(name)} is one slip of the pen away from {Quote(other)}", Severity.Warning).Note("here", first);

    public static Diagnostic OptionKind(SourceSpan span, string kind) =>
        OptionKindCode.At(span, $"this choice is lost on a vehicle without {Quote(kind)}: not every option names it", Severity.Warning);

    public static Diagnostic UnusedName(SourceSpan span, string what, string name, string due) =>
        UnusedNameCode.At(span, $"the {what} {Quote(name)} is of no use: {due}", Severity.Warning);

    public static Diagnostic UnneededAccept(SourceSpan span, string code) =>
        UnneededAcceptCode.At(span, $"there is no finding {code} here to accept", Severity.Warning);
}
