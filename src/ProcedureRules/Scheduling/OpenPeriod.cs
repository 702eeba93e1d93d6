namespace ProcedureRules.Scheduling;

/// <summary>A period of a day in which the shop is open.</summary>
/// <param name="From">Minutes after midnight.</param>
/// <param name="To">Minutes after midnight, later than <paramref name="From"/>; 1440 is the end of the day.</param>
public readonly record struct OpenPeriod(int From, int To);
