using System.Text.RegularExpressions;
using ProcedureRules.Inference;

namespace ProcedureRules.Choosing;

/// <summary>The ids by which a technician names a choice and its ways; a choice that comes up for several reasons has one.</summary>
internal static partial class ChoiceName
{
    private const int MostWords = 4;

    /// <summary>The id of a choice: the aspect that is wanted, or the rule, with its parts where it asks of several.</summary>
    /// <param name="key">The choice.</param>
    /// <param name="all">All choices there are.</param>
    public static string Of(ChoiceKey key, IReadOnlyList<ChoiceKey> all)
    {
        if (key is ChoiceKey.OfWays ways) return $"{ways.Part.Name}.{ways.Aspect.Name}";
        var rule = (ChoiceKey.OfRule)key;
        var alike = all.OfType<ChoiceKey.OfRule>().Where(other => ReferenceEquals(other.Rule, rule.Rule)).ToList();
        var name = Shortest(rule.Rule.Title, all.OfType<ChoiceKey.OfRule>().Select(other => other.Rule.Title).Distinct());
        if (alike.Select(other => other.Conclusion).Distinct().Count() > 1) name += $"-{rule.Conclusion + 1}";
        return alike.Select(Parts).Distinct().Count() > 1 ? $"{name}:{Parts(rule)}" : name;
    }

    /// <summary>Whether a choice of that id could come up on a vehicle: an aspect of one of its parts, or a rule that offers ways.</summary>
    public static bool MayBe(string id, InferenceResult result)
    {
        if (result.Situation.Parts.Any(part => result.Rules.Vocabulary.AspectsOf(part.Kind).Any(aspect => $"{part.Name}.{aspect.Name}" == id))) return true;
        var name = Behind().Replace(id, "");
        return result.Rules.Rules.Any(rule => rule.Conclusions.Any(conclusion => conclusion is Language.Conclusion.OneOf) && (First(rule.Title) == name || Slug(rule.Title) == name));
    }

    /// <summary>The id of a way: its operation, or the words of its option.</summary>
    public static string Of(ChoiceOption option, IReadOnlyList<ChoiceOption> all) => option.Option is { } written
        ? Shortest(Words(written), all.Select(other => Words(other.Option!)))
        : option.Records.SelectMany(record => record.Effects).Select(effect => effect.Atom).OfType<Atom.Occurs>().FirstOrDefault()?.Step.Operation.Name ?? "";

    private static string Parts(ChoiceKey.OfRule rule) =>
        string.Join('+', Enumerable.Range(0, rule.Binding.Count).Select(slot => rule.Binding[slot]).OfType<Facts.Part>().Select(part => part.Name).Distinct());

    private static string Words(Language.Option option) => Expression().Replace(option.Text.Text, " ");

    // The first words of a text where they tell it from the others, else all of it.
    private static string Shortest(string text, IEnumerable<string> all)
    {
        var name = First(text);
        return all.Count(other => First(other) == name) > 1 ? Slug(text) : name;
    }

    private static string First(string text) => string.Join('-', Slug(text).Split('-').Take(MostWords));

    private static string Slug(string text) => Gap().Replace(text.ToLowerInvariant(), "-").Trim('-');

    [GeneratedRegex(@"\{[^{}]*\}", RegexOptions.CultureInvariant)]
    private static partial Regex Expression();

    /// <summary>What tells the choices of one rule apart.</summary>
    [GeneratedRegex(@"(-\d+)?(:.*)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Behind();

    [GeneratedRegex(@"[^\p{L}\p{Nd}_]+", RegexOptions.CultureInvariant)]
    private static partial Regex Gap();
}
