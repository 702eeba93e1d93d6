using System.Text.RegularExpressions;

namespace ProcedureRules.Shapes;

/// <summary>A form that a whole text or key must have.</summary>
/// <param name="source">A regular expression that .NET and ECMAScript read alike, without anchors.</param>
/// <param name="inWords">The form in words, such as <c>lower-case letters, digits and '_'</c>.</param>
internal sealed class TextPattern(string source, string inWords)
{
    private readonly Regex _whole = new($@"\A(?:{source})\z", RegexOptions.CultureInvariant);

    /// <summary>The regular expression, anchored as JSON Schema wants it.</summary>
    public string Anchored { get; } = $"^(?:{source})$";

    /// <summary>The form in words.</summary>
    public string InWords { get; } = inWords;

    /// <summary>Whether a text has this form from its start to its end.</summary>
    public bool Matches(string text) => _whole.IsMatch(text);
}
