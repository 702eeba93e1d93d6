using System.Globalization;

namespace ProcedureRules.Diagnostics;

/// <summary>PR01xx: the shape of a file, its keys and kinds of value.</summary>
internal static partial class Messages
{
    private static readonly DiagnosticCode UnknownKeyCode = Declare(
        "PR0101",
        "A key that is not known here",
        "Correct the spelling, or move the key to where it belongs.",
        "kinds: {heat_shield: {txt: heat shield}}");

    private static readonly DiagnosticCode MissingKeyCode = Declare(
        "PR0102",
        "A key that has to be written is missing",
        "Add the key.",
        "aspects: {battery.charge: {states: [full, flat]}}");

    private static readonly DiagnosticCode WrongKindCode = Declare(
        "PR0103",
        "A value of the wrong kind",
        "Write the kind of value that the message names.",
        "kinds: [heat_shield]");

    private static readonly DiagnosticCode NotOneOfTheWordsCode = Declare(
        "PR0104",
        "A word that is not in the closed list",
        "Use one of the words of the list.",
        "kinds: {heat_shield: {if_silent: maybe}}");

    private static readonly DiagnosticCode WrongFormCode = Declare(
        "PR0105",
        "A text or name of the wrong form",
        "Write it in the form that the message describes.",
        "kinds: {Heat Shield: {}}");

    private static readonly DiagnosticCode OutOfBoundsCode = Declare(
        "PR0106",
        "A number or a list outside its bounds",
        "Stay within the bounds that the message names.",
        "operations: {hold: {on: engine, text: Hold it, place: bay, time: 1 min, hands: 30}}");

    private static readonly DiagnosticCode NoDecidingKeyCode = Declare(
        "PR0107",
        "An entry that does not say what it is",
        "Write one of the keys that the message names.",
        "then: [{at: s}]");

    public static Diagnostic UnknownKey(SourceSpan key, string name, string noun, IEnumerable<string> known)
    {
        var message = $"unknown key {Quote(name)}";
        var misspelt = Misspelt(UnknownKeyCode, key, message, name, known);
        return misspelt.Suggestion is null ? UnknownKeyCode.At(key, $"{message} in {noun}") : misspelt;
    }

    public static Diagnostic MissingKey(SourceSpan map, string name, string noun) =>
        MissingKeyCode.At(map, $"the key {Quote(name)} is missing in {noun}");

    public static Diagnostic WrongKind(SourceSpan node, string expected, string found) =>
        WrongKindCode.At(node, $"{expected} is expected here, this is {found}");

    public static Diagnostic NothingWritten(SourceSpan node, string expected) =>
        WrongKindCode.At(node, $"{expected} is expected here, nothing is written");

    public static Diagnostic NotOneOfTheWords(SourceSpan node, string text, IReadOnlyList<string> words)
    {
        var message = $"{Quote(text)} is not one of the words that can stand here";
        var misspelt = Misspelt(NotOneOfTheWordsCode, node, message, text, words);
        return misspelt.Suggestion is null
            ? NotOneOfTheWordsCode.At(node, $"{message}: {Either(words)}")
            : misspelt.Note($"the words are {Either(words)}");
    }

    public static Diagnostic WrongForm(SourceSpan node, string text, string form, IReadOnlyList<string> examples)
    {
        var whole = WrongFormCode.At(node, $"{Quote(text)} has the wrong form: {form} expected");
        return examples.Count == 0 ? whole : whole.Note($"for example {Either(examples)}");
    }

    public static Diagnostic NumberOutOfBounds(SourceSpan node, string text, int min, int max) =>
        OutOfBoundsCode.At(node, string.Create(CultureInfo.InvariantCulture, $"{text} is out of bounds: {min} to {max}"));

    public static Diagnostic ListTooShort(SourceSpan list, int least, int found) =>
        OutOfBoundsCode.At(list, $"at least {Count(least, "item")} expected in this list, there {(found == 1 ? "is" : "are")} {found}");

    public static Diagnostic NoDecidingKey(SourceSpan map, string noun, IReadOnlyList<string> keys) =>
        NoDecidingKeyCode.At(map, $"this is not {noun}: one of the keys {Either(keys)} is expected");
}
