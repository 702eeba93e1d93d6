using System.Globalization;

namespace ProcedureRules.Diagnostics;

/// <summary>PR02xx: packs, their names and what they define.</summary>
internal static partial class Messages
{
    private static readonly DiagnosticCode UnknownNameCode = Declare(
        "PR0201",
        "A name that no pack defines",
        "Correct the spelling, or define the name.",
        "kinds: {heat_shield: {is: prt}}");

    private static readonly DiagnosticCode PackNotUsedCode = Declare(
        "PR0202",
        "A name of a pack that this pack does not use",
        "Add the pack to 'uses'.",
        "uses: []\nkinds: {spare_starter: {is: starter}}");

    private static readonly DiagnosticCode DefinedTwiceCode = Declare(
        "PR0203",
        "A name that is defined twice",
        "Keep one of the two; names are shared by all packs.",
        "kinds: {starter: {}}");

    private static readonly DiagnosticCode UsesCode = Declare(
        "PR0204",
        "A pack that is used and not there, or packs that use each other in a ring",
        "Correct the name; move what both need into a pack that both use.",
        "uses: [botom_end]");

    private static readonly DiagnosticCode KindRingCode = Declare(
        "PR0205",
        "Kinds that are each a more general kind of the other",
        "Let one of them be a 'part'.",
        "kinds: {plug: {is: socket}, socket: {is: plug}}");

    private static readonly DiagnosticCode NoVehicleCode = Declare(
        "PR0206",
        "No pack defines the kind 'vehicle'",
        "Define it in the pack that the others use: kinds: {vehicle: {}}.",
        "kinds: {heat_shield: {}}");

    private static readonly DiagnosticCode StatesCode = Declare(
        "PR0207",
        "The states of an aspect do not go together",
        "Name each state once, at most 64, the normal one among them.",
        "aspects: {battery.charge: {states: [full, flat], normal: half}}");

    private static readonly DiagnosticCode FactTypeCode = Declare(
        "PR0208",
        "The type and the range of a fact do not go together",
        "Give a quantity a range of its own dimension with two ends; give words none.",
        "facts: {battery.rest: {type: voltage, range: 0..16 psi, ask: What does it read?}}");

    private static readonly DiagnosticCode NoQuestionCode = Declare(
        "PR0209",
        "A fact that cannot be asked for",
        "Write the question as 'ask', or say 'derived: yes' or 'demand: yes'.",
        "facts: {battery.rest: {type: voltage, range: 0..16 V}}");

    private static readonly DiagnosticCode NeverSetCode = Declare(
        "PR0210",
        "A fact that nobody states and no rule gives",
        "Write the rule that gives it, or let it be asked for.",
        "facts: {battery.sound: {type: yes_no, derived: yes}}");

    private static readonly DiagnosticCode FindCode = Declare(
        "PR0211",
        "The operation that should find a fact works on another kind",
        "Name an operation on the fact's kind.",
        "facts: {battery.rest: {type: voltage, range: 0..16 V, ask: What does it read?, find: measure_drop}}");

    private static readonly DiagnosticCode ChangeCode = Declare(
        "PR0212",
        "A change of state that cannot be read",
        "Write STATE -> STATE, several states with '|' between them, or any -> STATE.",
        "operations: {tilt: {on: oil_pan, text: Tilt it, change: {place: fitted to off}, place: under, time: 1 min}}");

    private static readonly DiagnosticCode UndoCode = Declare(
        "PR0213",
        "An operation that does not undo what it should",
        "Let each operation have one of its own that undoes it, on the same kind, and back to the states it found.",
        "operations: {look: {on: engine, text: Look at it, undo: look, place: bay, time: 1 min}}");

    private static readonly DiagnosticCode NoWayBackCode = Declare(
        "PR0214",
        "A state from which nothing leads back",
        "Name the operation that undoes it as 'undo', or make the aspect a 'mark'.",
        "operations: {cut: {on: hose, text: Cut it off, change: {place: fitted -> off}, place: bay, time: 1 min}}");

    private static readonly DiagnosticCode WorkCode = Declare(
        "PR0215",
        "An operation without place or with a time that is none",
        "Give every operation a place and its labour, such as 25..45 min; an undoing one takes its step's place.",
        "operations: {look: {on: engine, text: Look at it, place: bay, time: 3 in}}");

    private static readonly DiagnosticCode SplitEntryCode = Declare(
        "PR0216",
        "A text that a comma has cut in two",
        "Put the whole text in quotes: in brackets and braces YAML ends a text at a comma.",
        "when: [ covers(dust_cover, oil_pan) ]");

    private static readonly DiagnosticCode RelationCode = Declare(
        "PR0217",
        "A relation that is not between two kinds",
        "Name two kinds.",
        "relations: {rests_on: {of: [part, part, part], text: a on b}}");

    private static readonly DiagnosticCode RowCode = Declare(
        "PR0218",
        "A row of a table with too few or too many cells",
        "Write one cell for each input and one for the value.",
        "rows: [[none, 0 min, 5 min]]");

    private static readonly DiagnosticCode FileSortCode = Declare(
        "PR0219",
        "A file of another sort than is due here",
        "Put the file where it belongs: packs below the rules folder, archetypes into its folder 'archetypes'.",
        "vehicle: A sheet among the packs");

    public static Diagnostic FileOfOtherSort(SourceSpan span, string found, string due) =>
        FileSortCode.At(span, $"this is {found}, and {due} is expected here");

    public static Diagnostic UnknownName(SourceSpan span, string what, string name, IEnumerable<string> known) =>
        Misspelt(UnknownNameCode, span, $"there is no {what} {Quote(name)}", name, known);

    public static Diagnostic UnknownNameOf(SourceSpan span, string what, string name, string owner, IEnumerable<string> known) =>
        Misspelt(UnknownNameCode, span, $"{Quote(owner)} has no {what} {Quote(name)}", name, known);

    public static Diagnostic PackNotUsed(SourceSpan span, string what, string name, string pack, SourceSpan declared) =>
        PackNotUsedCode.At(span, $"the {what} {Quote(name)} belongs to the pack {Quote(pack)}, which this pack does not use")
            .Note("declared here", declared)
            .Note($"add {Quote(pack)} to 'uses'");

    public static Diagnostic DefinedTwice(SourceSpan span, string what, string name, SourceSpan first) =>
        DefinedTwiceCode.At(span, $"the {what} {Quote(name)} is defined twice").Note("first here", first);

    public static Diagnostic DefinedOnGeneralKind(SourceSpan span, string what, string path, string general, SourceSpan declared) =>
        DefinedTwiceCode.At(span, $"{Quote(path)} is already {what} of the more general kind {Quote(general)}").Note("declared here", declared);

    public static Diagnostic AspectAndFact(SourceSpan span, string path, SourceSpan aspect) =>
        DefinedTwiceCode.At(span, $"{Quote(path)} is both an aspect and a fact").Note("the aspect is declared here", aspect);

    public static Diagnostic RootKindDefined(SourceSpan span) =>
        DefinedTwiceCode.At(span, "the kind 'part' is there from the start and cannot be defined");

    public static Diagnostic UnknownPack(SourceSpan span, string name, IEnumerable<string> known) =>
        Misspelt(UsesCode, span, $"there is no pack {Quote(name)}", name, known);

    public static Diagnostic UsesRing(SourceSpan span, IEnumerable<string> ring) =>
        UsesCode.At(span, $"these packs use each other in a ring: {string.Join(" -> ", ring)}");

    public static Diagnostic KindRing(SourceSpan span, IEnumerable<string> ring) =>
        KindRingCode.At(span, $"these kinds are each a kind of the next: {string.Join(" -> ", ring)}");

    public static Diagnostic NoVehicleKind(SourceSpan span) =>
        NoVehicleCode.At(span, "no pack defines the kind 'vehicle', which every sheet has one of");

    public static Diagnostic StateTwice(SourceSpan span, string state, SourceSpan first) =>
        StatesCode.At(span, $"the state {Quote(state)} stands twice").Note("first here", first);

    public static Diagnostic TooManyWords(SourceSpan span, string what, int most, int found) =>
        StatesCode.At(span, string.Create(CultureInfo.InvariantCulture, $"at most {most} {what} fit, these are {found}"));

    public static Diagnostic UnknownState(SourceSpan span, string state, string aspect, IReadOnlyList<string> states)
    {
        var message = Misspelt(StatesCode, span, $"{Quote(state)} is not a state of {Quote(aspect)}", state, states);
        return message.Note($"its states are {Either(states)}");
    }

    public static Diagnostic UnknownType(SourceSpan span, string name, IEnumerable<string> known) =>
        Misspelt(FactTypeCode, span, $"there is no type {Quote(name)}", name, known);

    public static Diagnostic WordTwice(SourceSpan span, string word) => FactTypeCode.At(span, $"the word {Quote(word)} stands twice");

    public static Diagnostic RangeMissing(SourceSpan span, string path) =>
        FactTypeCode.At(span, $"{Quote(path)} is a quantity and needs a 'range': what can occur in the trade");

    public static Diagnostic RangeNotDue(SourceSpan span, string path) =>
        FactTypeCode.At(span, $"{Quote(path)} is no quantity and takes no 'range'");

    public static Diagnostic RangeFault(SourceSpan span, string fault, string? suggestion) =>
        WithSuggestion(FactTypeCode.At(span, fault), suggestion);

    public static Diagnostic NoQuestion(SourceSpan span, string path) =>
        NoQuestionCode.At(span, $"{Quote(path)} cannot be asked for: 'ask' is missing");

    public static Diagnostic NeverSet(SourceSpan span, string path, bool isDemand) => NeverSetCode.At(
        span,
        isDemand ? $"no rule demands anything of {Quote(path)}" : $"no rule sets {Quote(path)}, and nobody is asked for it",
        Severity.Warning);

    public static Diagnostic FindOnOtherKind(SourceSpan span, string operation, string on, string path, SourceSpan declared) =>
        FindCode.At(span, $"{Quote(operation)} works on {Quote(on)} and cannot find {Quote(path)}").Note("declared here", declared);

    public static Diagnostic ChangeForm(SourceSpan span, string text) =>
        ChangeCode.At(span, $"{Quote(text)} is not a change of state").Note("for example 'fitted -> off', 'jack | hoist -> blocks' or 'any -> off'");

    public static Diagnostic ChangesNothing(SourceSpan span) => ChangeCode.At(span, "this changes nothing: both states are the same");

    public static Diagnostic BeforeWithoutStep(SourceSpan span, string operation) =>
        ChangeCode.At(span, $"'before' means the state that the undone step found, and {Quote(operation)} undoes nothing");

    public static Diagnostic UndoesItself(SourceSpan span, string operation) => UndoCode.At(span, $"{Quote(operation)} cannot undo itself");

    public static Diagnostic UndoesTwo(SourceSpan span, string undo, string first, SourceSpan firstSpan) =>
        UndoCode.At(span, $"{Quote(undo)} already undoes {Quote(first)}").Note("here", firstSpan).Note("each operation needs one of its own that undoes it");

    public static Diagnostic UndoIsUndone(SourceSpan span, string undo, SourceSpan undoSpan) =>
        UndoCode.At(span, $"{Quote(undo)} has an 'undo' itself; what undoes a step is not undone").Note("declared here", undoSpan);

    public static Diagnostic UndoOnOtherKind(SourceSpan span, string undo, string on, string due, SourceSpan declared) =>
        UndoCode.At(span, $"{Quote(undo)} works on {Quote(on)}; what undoes this must work on {Quote(due)} or a more general kind")
            .Note("declared here", declared);

    public static Diagnostic UndoDoesNotReturn(SourceSpan span, string undo, string aspect, string from, string to) =>
        UndoCode.At(span, $"{Quote(undo)} does not bring {Quote(aspect)} back from {Quote(from)} to {Quote(to)}");

    public static Diagnostic NoWayBack(SourceSpan span, string state, string aspect, string normal) =>
        NoWayBackCode.At(span, $"nothing leads {Quote(aspect)} back from {Quote(state)} to {Quote(normal)}")
            .Note("name the operation that undoes this as 'undo', or say 'mark: yes' of the aspect");

    public static Diagnostic NoPlace(SourceSpan span, string operation) =>
        WorkCode.At(span, $"{Quote(operation)} has no 'place'");

    public static Diagnostic TimeFault(SourceSpan span, string fault, string? suggestion) => WithSuggestion(WorkCode.At(span, fault), suggestion);

    public static Diagnostic TimeBounds(SourceSpan span) => WorkCode.At(span, "labour has two ends, and neither is below zero");

    public static Diagnostic SplitEntry(SourceSpan span, string first) =>
        SplitEntryCode.At(span, $"a comma has cut this text in two: {Quote(first)} ends inside a parenthesis").Note("put the whole text in quotes");

    public static Diagnostic SplitValue(Diagnostic unknownKey) =>
        unknownKey.Note("a comma ends a text inside '{ }': put a text that holds one in quotes");

    public static Diagnostic SecondConclusion(Diagnostic unknownKey) =>
        unknownKey.Note("a list entry is one conclusion: write this one as an entry of its own");

    public static Diagnostic RelationNotOfTwo(SourceSpan span, int found) =>
        RelationCode.At(span, $"a relation is between two kinds, {(found == 1 ? "this is" : "these are")} {found}");

    public static Diagnostic RowLength(SourceSpan span, int due, int found) =>
        RowCode.At(span, $"{Count(due, "cell")} expected in this row: one for each input, then the value; there {(found == 1 ? "is" : "are")} {found}");

    private static Diagnostic WithSuggestion(Diagnostic diagnostic, string? suggestion) => suggestion is null
        ? diagnostic
        : diagnostic with { Message = $"{diagnostic.Message}; did you mean {Quote(suggestion)}?", Suggestion = suggestion };
}
