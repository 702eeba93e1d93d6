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
        return [.. moments.Select((moment, i) =>
        {
            var times = moment.Times(moment.Did!);
            var id = times == 1 ? moment.Did!.Step.Name : $"{moment.Did!.Step.Name}#{times}";
            return new Occurrence(i, id, moment.Did!, moment.Earlier!.State, moment.State);
        })];
    }
}
