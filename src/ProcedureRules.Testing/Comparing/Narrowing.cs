using ProcedureRules.Yaml;

namespace ProcedureRules.Testing.Comparing;

/// <summary>Whether what others may have written of a name no longer holds: a state or word is gone, or it is of another kind or type.</summary>
internal static class Narrowing
{
    // What a sheet, a scenario or another pack relies on when it names one of these.
    private static readonly Dictionary<string, string[]> ReliedOn = new(StringComparer.Ordinal)
    {
        ["kind"] = ["is"],
        ["aspect"] = ["states", "normal"],
        ["fact"] = ["type", "derived", "demand"],
        ["relation"] = ["of"],
        ["operation"] = ["on"],
        ["cause"] = ["on"],
        ["job"] = ["on"],
    };

    /// <summary>Whether the declaration after allows less than the one before.</summary>
    public static bool IsNarrower(PackItem before, PackItem after) =>
        before.Node is YamlMapping old && after.Node is YamlMapping now && ReliedOn.GetValueOrDefault(after.Sort)?.Any(key => IsNarrower(key, old, now)) == true;

    private static bool IsNarrower(string key, YamlMapping old, YamlMapping now) => (old.Value(key), now.Value(key)) switch
    {
        (YamlSequence words, YamlSequence more) when key is not "of" => Texts(words).Except(Texts(more)).Any(),
        (YamlSequence pair, YamlSequence other) => !Texts(pair).SequenceEqual(Texts(other)),
        // What rules alone give may be taken from them and asked for, but not the other way round.
        _ when key is "derived" or "demand" => now.YesNo(key) == true && old.YesNo(key) != true,
        (YamlScalar word, YamlScalar other) => word.Text != other.Text,
        var (was, becomes) => was is null != becomes is null || was?.GetType() != becomes?.GetType(),
    };

    private static IEnumerable<string> Texts(YamlSequence list) => list.Items.OfType<YamlScalar>().Select(word => word.Text);
}
