namespace ProcedureRules.Diagnostics;

/// <summary>PR05xx: vehicle sheets, work orders and statements.</summary>
internal static partial class Messages
{
    private static readonly DiagnosticCode UnknownPartCode = Declare(
        "PR0501",
        "A part that is not on the sheet",
        "Correct the spelling, or add the part under 'parts'.",
        "facts: {startr.bolt_torque: 35 lb.ft}");

    private static readonly DiagnosticCode SeveralPartsCode = Declare(
        "PR0502",
        "A kind of which the vehicle has several parts, where one is meant",
        "Write the name of the part.",
        "facts: {engine_mount.condition: torn}");

    private static readonly DiagnosticCode NoSuchFactCode = Declare(
        "PR0503",
        "A fact or state that the part does not have",
        "Correct the spelling; facts stand under 'facts', states under 'arrival'.",
        "facts: {starter.bolt_torqe: 35 lb.ft}");

    private static readonly DiagnosticCode ValueCode = Declare(
        "PR0504",
        "A value that does not fit its fact",
        "Write a quantity with its unit, or one of the fact's words.",
        "facts: {oil_pan.drop_available: 2}");

    private static readonly DiagnosticCode ImplausibleCode = Declare(
        "PR0505",
        "A value outside what occurs in the trade",
        "Correct the unit or the figure. Until then it counts as not stated, and the plan asks; a value that is right all the same is stated with 'sure'.",
        "facts: {oil_pan.drop_available: 2 m}");

    private static readonly DiagnosticCode RelationStatementCode = Declare(
        "PR0506",
        "A statement on a relation that cannot be read",
        "Write relation(a, b), with 'not' or 'unknown' before it where due, and parts of the right kinds.",
        "relations: [covers dust_cover]");

    private static readonly DiagnosticCode StatedTwiceCode = Declare(
        "PR0507",
        "Something that one file states twice",
        "Keep one of the two.",
        "relations: [\"covers(dust_cover, oil_pan)\", \"not covers(dust_cover, oil_pan)\"]");

    private static readonly DiagnosticCode NotStatableCode = Declare(
        "PR0508",
        "A fact that only rules give",
        "Leave it out, and state what the rules conclude it from.",
        "facts: {oil_pan.jackable: yes}");

    private static readonly DiagnosticCode PartCode = Declare(
        "PR0509",
        "A part whose name and kind do not go together",
        "Name the part's kind; a name that is a kind's stands for a part of that kind.",
        "parts: {starter: heater_hose}");

    private static readonly DiagnosticCode ArchetypeCode = Declare(
        "PR0510",
        "An archetype that is not there, or starts from another one",
        "Correct the name; copy what an archetype needs into it.",
        "archetype: rear_drive");

    private static readonly DiagnosticCode JobCode = Declare(
        "PR0511",
        "A job that does not say which part it is on",
        "Write {job: NAME, on: PART}.",
        "jobs: [replace_engine_mount]");

    private static readonly DiagnosticCode StatementCode = Declare(
        "PR0512",
        "A statement that cannot be read",
        "Write PART.FACT=VALUE, PART.ASPECT=STATE, relation(a, b)=yes, or part NAME=yes; 'no' and 'unknown' as well.",
        "oil_pan.drop_available 2 in");

    private static readonly DiagnosticCode ImpossibleCode = Declare(
        "PR0513",
        "A value that nothing can have",
        "Look at the sign, the unit, and from where the gauge counts.",
        "facts: {starter.mass: -3 kg}");

    public static Diagnostic UnknownPart(SourceSpan span, string name, IEnumerable<string> known) =>
        Misspelt(UnknownPartCode, span, $"the sheet has no part {Quote(name)}", name, known);

    public static Diagnostic NoPartOfKind(SourceSpan span, string kind) =>
        UnknownPartCode.At(span, $"the sheet has no part of the kind {Quote(kind)}").Note($"add one under 'parts', such as '{kind}: {kind}'");

    public static Diagnostic PartIsAbsent(SourceSpan span, string name, SourceSpan stated) =>
        UnknownPartCode.At(span, $"the sheet says that there is no {Quote(name)}").Note("here", stated);

    public static Diagnostic SeveralParts(SourceSpan span, string kind, IEnumerable<string> parts) =>
        SeveralPartsCode.At(span, $"there are several parts of the kind {Quote(kind)}: name {Either(parts)}");

    public static Diagnostic NoSuchFact(SourceSpan span, string part, string name, string what, IEnumerable<string> known) =>
        Misspelt(NoSuchFactCode, span, $"{Quote(part)} has no {what} {Quote(name)}", name, known);

    public static Diagnostic IsAspect(SourceSpan span, string path) =>
        NoSuchFactCode.At(span, $"{Quote(path)} is a state: it stands under 'arrival'");

    public static Diagnostic IsFact(SourceSpan span, string path) =>
        NoSuchFactCode.At(span, $"{Quote(path)} is a fact: it stands under 'facts'");

    public static Diagnostic ValueFault(SourceSpan span, string fault, string? suggestion) => WithSuggestion(ValueCode.At(span, fault), suggestion);

    public static string Due(string what, string units) => units.Length == 0 ? $"{what} is due" : $"{what} is due ({units})";

    public static Diagnostic NotAWord(SourceSpan span, string word, string path, IReadOnlyList<string> words) =>
        Misspelt(ValueCode, span, $"{Quote(word)} is not a value of {Quote(path)}", word, words).Note($"its values are {Either(words)}");

    public static Diagnostic NotAState(SourceSpan span, string word, string path, IReadOnlyList<string> states) =>
        Misspelt(ValueCode, span, $"{Quote(word)} is not a state of {Quote(path)}", word, states).Note($"its states are {Either(states)}");

    public static Diagnostic Implausible(SourceSpan span, string value, string path, string range, string? likely, string? meant, SourceSpan declared)
    {
        var message = $"{Quote(value)} is outside what occurs for {Quote(path)}: {range}";
        var whole = likely is null ? message : $"{message}; is this the unit you mean? {Quote(likely)} would fit{(meant is null ? "" : $", which {meant} is at sea level")}";
        return (ImplausibleCode.At(span, whole, Severity.Warning) with { Suggestion = likely })
            .Note("it is not used and will be asked again; if it is right, state it as sure")
            .Note("declared here", declared);
    }

    public static Diagnostic Impossible(SourceSpan span, string value, string phrase, string least) =>
        ImpossibleCode.At(span, $"{Quote(value)} cannot be: {phrase} is never below {least}");

    public static Diagnostic RelationForm(SourceSpan span, string text) =>
        RelationStatementCode.At(span, $"{Quote(text)} is not a statement on a relation").Note("for example 'covers(dust_cover, oil_pan)', 'not covers(a, b)' or 'unknown covers(a, b)'");

    public static Diagnostic UnknownRelation(SourceSpan span, string name, IEnumerable<string> known) =>
        Misspelt(RelationStatementCode, span, $"there is no relation {Quote(name)}", name, known);

    public static Diagnostic RelationKind(SourceSpan span, string part, string kind, string relation, string due, SourceSpan declared) =>
        RelationStatementCode.At(span, $"{Quote(part)} is of the kind {Quote(kind)}; {Quote(relation)} takes one of the kind {Quote(due)} here").Note("declared here", declared);

    public static Diagnostic RelationToItself(SourceSpan span, string part, string relation) =>
        RelationStatementCode.At(span, $"{Quote(relation)} is between two parts, and both are {Quote(part)}");

    public static Diagnostic StatedTwice(SourceSpan span, string what, SourceSpan first) =>
        StatedTwiceCode.At(span, $"{Quote(what)} stands twice in this file").Note("first here", first);

    public static Diagnostic NotStatable(SourceSpan span, string path, bool isDemand, SourceSpan declared) => NotStatableCode
        .At(span, isDemand ? $"{Quote(path)} collects what rules demand and cannot be stated" : $"{Quote(path)} is derived by rules and cannot be stated")
        .Note("declared here", declared);

    public static Diagnostic UnknownKind(SourceSpan span, string name, IEnumerable<string> known) =>
        Misspelt(PartCode, span, $"there is no kind {Quote(name)}", name, known);

    public static Diagnostic NeitherPartNorKind(SourceSpan span, string name, IEnumerable<string> known) =>
        Misspelt(PartCode, span, $"{Quote(name)} is neither a part that is known so far nor a kind", name, known);

    public static Diagnostic NameOfOtherKind(SourceSpan span, string name, string kind) =>
        PartCode.At(span, $"{Quote(name)} is the name of a kind, and {Quote(kind)} is not one of that kind; give the part another name");

    public static Diagnostic OneVehicle(SourceSpan span) =>
        PartCode.At(span, "every sheet has exactly one vehicle, named 'vehicle', without being told");

    public static Diagnostic UnknownArchetype(SourceSpan span, string name, IEnumerable<string> known)
    {
        var names = known.Order(StringComparer.Ordinal).ToList();
        var unknown = Misspelt(ArchetypeCode, span, $"there is no archetype {Quote(name)}", name, names);
        return names.Count == 0 || unknown.Suggestion is not null ? unknown : unknown.Note($"the archetypes are {Either(names)}");
    }

    public static Diagnostic ArchetypeOfArchetype(SourceSpan span) =>
        ArchetypeCode.At(span, "an archetype does not start from another one");

    public static Diagnostic UnknownJob(SourceSpan span, string name, IEnumerable<string> known) =>
        Misspelt(JobCode, span, $"there is no job {Quote(name)}", name, known);

    public static Diagnostic JobNeedsPart(SourceSpan span, string job, string kind, IEnumerable<string> parts) =>
        JobCode.At(span, $"the job {Quote(job)} can be on several parts of the kind {Quote(kind)}: say on which, {Either(parts)}");

    public static Diagnostic JobWithoutPart(SourceSpan span, string job, string kind) =>
        JobCode.At(span, $"the job {Quote(job)} is on a part of the kind {Quote(kind)}, and the sheet has none")
            .Note($"add one under 'parts', such as '{kind}: {kind}', and under 'relations' what lies over it or turns it");

    public static Diagnostic JobOnOtherKind(SourceSpan span, string job, string part, string kind, string due) =>
        JobCode.At(span, $"the job {Quote(job)} is on a part of the kind {Quote(due)}, and {Quote(part)} is of the kind {Quote(kind)}");

    public static Diagnostic StatementForm(SourceSpan span, string text) => StatementCode.At(span, $"{Quote(text)} is not a statement")
        .Note("for example 'oil_pan.drop_available=2 in', 'vehicle.height=raised', 'covers(dust_cover, oil_pan)=no' or 'part oil_cooler=yes'");

    public static Diagnostic StatementAnswer(SourceSpan span, string text) =>
        Misspelt(StatementCode, span, $"{Quote(text)} is not an answer: {Either(["yes", "no", "unknown"])}", text, ["yes", "no", "unknown"]);

    public static Diagnostic VehicleMissing(SourceSpan span) =>
        MissingKeyCode.At(span, "this work order does not name its vehicle sheet as 'vehicle'");
}
