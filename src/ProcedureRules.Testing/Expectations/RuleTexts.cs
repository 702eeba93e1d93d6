using System.Collections.Concurrent;
using ProcedureRules.Language;

namespace ProcedureRules.Testing.Expectations;

/// <summary>The texts of the rules by keyword: that a plan does not say what no rule says proves nothing.</summary>
internal sealed class RuleTexts(RuleBase rules)
{
    private readonly Lazy<ILookup<string, string>> _texts = new(() => rules.Rules.SelectMany(rule => All(rule.Conclusions)).ToLookup(said => said.Keyword, said => said.Text.Text));
    private readonly ConcurrentDictionary<(string, string), bool> _known = [];

    /// <summary>Whether some rule can say the words; of what planning says itself, always.</summary>
    public bool CanSay(string keyword, string words) => _known.GetOrAdd((keyword, words), _ => Search(keyword, words));

    /// <summary>The keyword of a text that has the words; null where none has.</summary>
    public string? Saying(string words) =>
        _texts.Value.FirstOrDefault(texts => texts.Any(text => text.Contains(words, StringComparison.OrdinalIgnoreCase)))?.Key;

    private bool Search(string keyword, string words)
    {
        var texts = _texts.Value[keyword].ToList();
        return keyword is "hold" or "stop" or "way" or "offer" or "assumption"
            || texts.Exists(text => text.Contains(words, StringComparison.OrdinalIgnoreCase))
            || texts.Exists(text => text.Contains('{', StringComparison.Ordinal) && CanRender(text, words));
    }

    /// <summary>Whether a text may come to have the words once its braces are filled in; a brace may stand for anything, but not for most of them.</summary>
    internal static bool CanRender(string text, string words)
    {
        var tokens = Tokens(text);
        var cost = new int[tokens.Count + 1];
        for (var i = 0; i < words.Length; i++)
        {
            var next = Enumerable.Repeat(words.Length + 1, tokens.Count + 1).ToArray();
            for (var at = 0; at < tokens.Count; at++)
            {
                if (tokens[at] is { } letter)
                {
                    if (char.ToUpperInvariant(letter) == char.ToUpperInvariant(words[i])) next[at + 1] = Math.Min(next[at + 1], cost[at]);
                }
                else
                {
                    cost[at + 1] = Math.Min(cost[at + 1], cost[at]);
                    next[at] = Math.Min(next[at], cost[at] + 1);
                }
            }

            cost = next;
        }

        return cost.Min() <= words.Length / 2;
    }

    private static List<char?> Tokens(string text)
    {
        var tokens = new List<char?>();
        for (var i = 0; i < text.Length; i++)
        {
            var end = text[i] == '{' ? text.IndexOf('}', i) : -1;
            tokens.Add(end < 0 ? text[i] : null);
            if (end >= 0) i = end;
        }

        return tokens;
    }

    private static IEnumerable<(string Keyword, Template Text)> All(IEnumerable<Conclusion> conclusions) => conclusions.SelectMany(conclusion => conclusion switch
    {
        Conclusion.OneOf choice => All(choice.Options.SelectMany(option => option.Then)),
        Conclusion.Caution caution => [(PlanWords.Word(caution.Signal), caution.Text)],
        Conclusion.Check check => [("check", check.Text)],
        Conclusion.Detail detail => [("detail", detail.Text)],
        Conclusion.Wait { Text: { } text } => [("wait", text)],
        Conclusion.Tool tool => [("tool", tool.Text)],
        Conclusion.Supply supply => [("supply", supply.Text)],
        _ => Array.Empty<(string, Template)>(),
    });
}
