using ProcedureRules.Diagnostics;

namespace ProcedureRules.Yaml;

/// <summary>Refuses characters that YAML 1.2.2, section 5.1, leaves out, and those that readers disagree about.</summary>
/// <remarks>
/// A parser that takes a NUL for the end of the text would drop the rest of the file without a word, so the text is
/// looked through first. NEL, LS and PS are line breaks in YAML 1.1 and ordinary characters in 1.2: an editor and the
/// parser would see different files.
/// </remarks>
internal static class YamlCharacters
{
    /// <summary>Reports the first forbidden character; the file is not read any further then.</summary>
    public static bool Check(SourceFile file, DiagnosticBag bag)
    {
        var text = file.Text;
        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsHighSurrogate(text[i]) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]))
            {
                i++;
            }
            else if (!IsAllowed(text[i]))
            {
                bag.Add(Messages.ForbiddenCharacter(file.Span(i, 1), text[i]));
                return false;
            }
        }

        return true;
    }

    private static bool IsAllowed(char c) =>
        c is '\t' or '\n' or '\r' or (>= ' ' and <= '~') or (>= '\u00A0' and <= '\uD7FF' and not ('\u2028' or '\u2029'))
            or (>= '\uE000' and <= '\uFFFD');
}
