using ProcedureRules.Language;

namespace ProcedureRules.Ordering;

/// <summary>One step at its place in an order, with the states before and after it.</summary>
internal sealed record Occurrence(int Index, string Id, Work Work, int[] Before, int[] After)
{
    /// <summary>The steps that led to a moment, with their ids: a repeated step has its number behind it.</summary>
    public static IReadOnlyList<Occurrence> Upto(Moment end)
    {
        var moments = new List<Moment>();
        for (var moment = end; moment.Did is not null; moment = moment.Earlier!) moments.Add(moment);
        moments.Reverse();
        return [.. moments.Select((moment, i) => new Occurrence(i, IdOf(moment.Did!.Step, moment.Times(moment.Did!)), moment.Did!, moment.Earlier!.State, moment.State))];
    }

    /// <summary>The id of a step the first time it is done, the second, and so on.</summary>
    public static string IdOf(Step step, int time) => time == 1 ? step.Name : $"{step.Name}#{time}";
}
