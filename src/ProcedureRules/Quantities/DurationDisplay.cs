namespace ProcedureRules.Quantities;

/// <summary>Durations as a workshop says them: whole minutes below two hours, then hours and minutes; rounded outward.</summary>
internal static class DurationDisplay
{
    private const double Minute = 60;
    private const int MinutesBelow = 120;
    private const int MostMinutes = 72 * 60;

    /// <summary>The text, or null where seconds or days say it better.</summary>
    public static string? Of(Quantity value)
    {
        if (value.Dimension != Dimension.Duration || !value.IsBounded || value.Low < 0) return null;
        if (value.High == 0) return End(0);
        if (value.High < Minute) return null;
        if (value.High >= MostMinutes * Minute) return null;
        // A minute's dust from adding many durations must not push an end to the next minute.
        var low = (int)Math.Floor((value.Low / Minute) + 1e-6);
        var high = (int)Math.Ceiling((value.High / Minute) - 1e-6);
        if (value.IsPoint) return value.Low % Minute == 0 ? End(low) : null;
        if (high < MinutesBelow) return $"{low}..{high} min";
        return low % 60 == 0 && high % 60 == 0 ? $"{low / 60}..{high / 60} h" : $"{End(low)}..{End(high)}";
    }

    private static string End(int minutes) => minutes < MinutesBelow
        ? $"{minutes} min"
        : minutes % 60 == 0 ? $"{minutes / 60} h" : $"{minutes / 60} h {minutes % 60} min";
}
