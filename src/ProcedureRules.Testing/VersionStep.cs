namespace ProcedureRules.Testing;

/// <summary>Whether the version of a pack was stepped enough for what has changed in it.</summary>
/// <param name="Pack">The pack.</param>
/// <param name="Before">The version before; null for a new pack.</param>
/// <param name="After">The version after; null for a pack that is gone.</param>
/// <param name="Due">The number that has to be stepped; null where nothing has changed.</param>
/// <param name="IsEnough">Whether it was. A pack that is new or gone has nothing to step.</param>
public sealed record VersionStep(string Pack, string? Before, string? After, VersionPart? Due, bool IsEnough)
{
    /// <summary>The least version that would do; null where there is nothing to step.</summary>
    public string? Least => Before is null || Due is not { } due ? null : Numbers(Before) switch
    {
        [var major, _, _] when due == VersionPart.Major => $"{major + 1}.0.0",
        [var major, var minor, _] when due == VersionPart.Minor => $"{major}.{minor + 1}.0",
        [var major, var minor, var patch] => $"{major}.{minor}.{patch + 1}",
        _ => null,
    };

    /// <summary>Judges a step.</summary>
    internal static VersionStep Of(string pack, string? before, string? after, VersionPart? due) =>
        new(pack, before, after, due, before is null || after is null || IsStepped(Numbers(before), Numbers(after), due));

    private static bool IsStepped(int[] before, int[] after, VersionPart? due)
    {
        if (before.Length != 3 || after.Length != 3) return false;
        // The first number that differs says what was stepped.
        for (var i = 0; i < 3; i++)
            if (after[i] != before[i]) return after[i] > before[i] && (due is not { } part || (int)VersionPart.Major - i >= (int)part);
        return due is null;
    }

    private static int[] Numbers(string version) => [.. version.Split('.').Select(number => int.TryParse(number, out var read) ? read : 0)];
}
