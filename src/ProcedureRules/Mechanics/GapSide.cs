namespace ProcedureRules.Mechanics;

/// <summary>On which side of a watched point its gap lies, as packs say it.</summary>
internal static class GapSide
{
    /// <summary>The gap is over the point.</summary>
    public const string Above = "above";

    /// <summary>The gap is under the point.</summary>
    public const string Below = "below";

    /// <summary>The gap is on the side away from the mount left tight.</summary>
    public const string Away = "away";

    /// <summary>The gap is on the side towards the mount left tight.</summary>
    public const string Toward = "toward";

    /// <summary>Slack: a hose, cable or strap that is used up whichever way the point goes.</summary>
    public const string Any = "any";

    public static IReadOnlyList<string> All { get; } = [Above, Below, Away, Toward, Any];
}
