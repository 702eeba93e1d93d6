namespace ProcedureRules.Diagnostics;

/// <summary>PR00xx: files, and YAML as such.</summary>
internal static partial class Messages
{
    private static readonly DiagnosticCode FileMissingCode = Declare(
        "PR0001",
        "A file is not there or cannot be read",
        "Check the path, and that the file may be read.",
        "vehicle: no-such-sheet.yaml");

    private static readonly DiagnosticCode NotUtf8Code = Declare(
        "PR0002",
        "A file is not UTF-8 text",
        "Save the file as UTF-8.",
        "ask: Warmer than 80 °C? (saved as Latin-1)");

    private static readonly DiagnosticCode TooBigCode = Declare(
        "PR0003",
        "A file is too big or too deep",
        "Split the file; write nested lists and mappings flatter.",
        "needs: ... [x] ...");

    private static readonly DiagnosticCode CharacterCode = Declare(
        "PR0004",
        "A character that a file may not hold",
        "Delete the character; it is invisible in most editors.",
        "text: Take the ␀pan down");

    private static readonly DiagnosticCode SyntaxCode = Declare(
        "PR0005",
        "The text is not well-formed YAML",
        "Look at the place named and the line before it: brackets, quotes, indentation, a space after a colon.",
        "places: [bay, under");

    private static readonly DiagnosticCode EmptyCode = Declare(
        "PR0006",
        "A file holds nothing",
        "Write the content, or delete the file.",
        "# only a comment");

    private static readonly DiagnosticCode SecondDocumentCode = Declare(
        "PR0007",
        "A file holds more than one document",
        "Put each document into a file of its own.",
        "pack: engine\n---\npack: gearbox");

    private static readonly DiagnosticCode DuplicateKeyCode = Declare(
        "PR0008",
        "A key stands twice in one mapping",
        "Keep one of the two, or put both values into a list.",
        "when: [a]\nwhen: [b]");

    private static readonly DiagnosticCode KeyKindCode = Declare(
        "PR0009",
        "A key is not a plain text",
        "Write the key as a word; quote text that holds braces or brackets.",
        "{a: b}: c");

    private static readonly DiagnosticCode ForbiddenYamlCode = Declare(
        "PR0010",
        "A YAML device that is not used here: tag, anchor, alias or merge key",
        "Write the value out. Quote a text that starts with '!', '&' or '*'.",
        "then: *same_as_before");

    public static Diagnostic FileMissing(SourceSpan file) =>
        FileMissingCode.At(file, "there is no such file");

    public static Diagnostic FolderMissing(SourceSpan folder) =>
        FileMissingCode.At(folder, "there is no such folder");

    public static Diagnostic FolderDue(SourceSpan file, string folder) =>
        FileMissingCode.At(file, "a folder of packs is due here, and this is a file").Note($"packs use each other and are read together: name their folder, {Quote(folder)}");

    public static Diagnostic FileUnreadable(SourceSpan file, string why) =>
        FileMissingCode.At(file, $"the file cannot be read: {why.ReplaceLineEndings(" ").TrimEnd('.')}");

    public static Diagnostic FolderForFile(SourceSpan file) => FileMissingCode.At(file, "a file is due here, and this is a folder");

    public static Diagnostic NotUtf8(SourceSpan place) =>
        NotUtf8Code.At(place, "the file is not UTF-8 text from here on; save it as UTF-8");

    public static Diagnostic TooLong(SourceSpan file, int mostCharacters) =>
        TooBigCode.At(file, $"the file is too long: at most {Count(mostCharacters, "character")}");

    public static Diagnostic TooDeep(SourceSpan place, int mostLevels) =>
        TooBigCode.At(place, $"this is nested too deep: at most {Count(mostLevels, "level")}");

    public static Diagnostic TooManyNodes(SourceSpan place, int mostNodes) =>
        TooBigCode.At(place, $"the file holds too much: at most {Count(mostNodes, "value")}, reached here");

    public static Diagnostic ForbiddenCharacter(SourceSpan place, char character) =>
        CharacterCode.At(place, $"a file may not hold the character {CodePoint(character)}");

    public static Diagnostic YamlSyntax(SourceSpan place, string why) =>
        SyntaxCode.At(place, $"this is not well-formed YAML: {why}");

    public static Diagnostic TabIndent(SourceSpan place) =>
        SyntaxCode.At(place, "a tab cannot indent a line of YAML; use spaces");

    public static Diagnostic EmptyFile(SourceSpan file) => EmptyCode.At(file, "the file holds nothing");

    public static Diagnostic SecondDocument(SourceSpan place) =>
        SecondDocumentCode.At(place, "a second document starts here; a file holds one");

    public static Diagnostic DuplicateKey(SourceSpan second, string key, SourceSpan first) =>
        DuplicateKeyCode.At(second, $"the key {Quote(key)} stands twice in this mapping").Note("first here", first);

    public static Diagnostic KeyNotText(SourceSpan key, string found) =>
        KeyKindCode.At(key, $"a key must be a text, this is {found}");

    public static Diagnostic KeyMissing(SourceSpan key) => KeyKindCode.At(key, "a key must be a text, nothing is written here");

    public static Diagnostic ForbiddenYaml(SourceSpan place, string device) =>
        ForbiddenYamlCode.At(place, $"{device} is not used here; write the value out, or quote the text");
}
