using ProcedureRules.Beliefs;
using ProcedureRules.Choosing;
using ProcedureRules.Diagnostics;
using ProcedureRules.Ordering;
using ProcedureRules.Plans;

namespace ProcedureRules.Planning;

/// <summary>Says in words why there is no order: which steps are left, and what keeps each of them.</summary>
internal static class PlanFailure
{
    private const int MostSteps = 8;

    /// <summary>Why the search found no order.</summary>
    public static Diagnostic NoOrder(World world, Sequencer sequencer)
    {
        var at = sequencer.Furthest ?? Moment.Start(world);
        var left = world.Works.Where(work => work.IsDue && at.Times(work) == 0)
            .Concat(at.Owed().Select(debt => debt.Work.UndoneBy!)).Distinct().OrderBy(work => work.Step.Name, StringComparer.Ordinal).ToList();
        var diagnostic = sequencer.GaveUp
            ? Messages.OrderSearchBound(left.Select(work => work.Step.Name))
            : Messages.NoOrder(left.Select(work => work.Step.Name));
        foreach (var work in left.Take(MostSteps))
            foreach (var obstacle in sequencer.Motion.Obstacles(at, work).DistinctBy(obstacle => Say(world, obstacle)).Take(3))
                diagnostic = diagnostic.Note($"{work.Step.Name} {Say(world, obstacle)}", obstacle.Source?.Record.Rule?.Span ?? SourceSpan.None);
        foreach (var end in world.Ends.Where(end => left.Count == 0 && !end.State.Holds(at.State)).Take(MostSteps))
            diagnostic = diagnostic.Note($"the end wants {world.Say(end.State)}");
        return diagnostic;
    }

    /// <summary>A ring of order conditions that can all hold at once.</summary>
    public static Diagnostic Ring(IReadOnlyList<OrderEdge> ring)
    {
        var diagnostic = Messages.OrderRing(ring[0].Source?.Record.Rule?.Span ?? SourceSpan.None, ring.Select(edge => edge.First.Step.Name));
        foreach (var edge in ring)
            diagnostic = diagnostic.Note($"{edge.First.Step.Name} before {edge.Second.Step.Name}: {edge.Source?.Record.Rule?.Title}", edge.Source?.Record.Rule?.Span ?? SourceSpan.None);
        return diagnostic;
    }

    /// <summary>What is out of reach whatever the order is, as reasons to stop.</summary>
    public static IReadOnlyList<Fault> OutOfReach(World world)
    {
        var faults = new List<Fault>();
        foreach (var (work, missing, source) in new Reachability(world).OutOfReach())
        {
            var state = world.Say(missing);
            var level = work is null ? Assurance.Sure : world.Beliefs.Required(new Inference.Atom.Occurs(work.Step));
            var record = source?.Record ?? (work is null ? null : world.Beliefs.Network.RecordsSupporting(new Inference.Atom.Occurs(work.Step)).Select(support => support.Record).FirstOrDefault());
            if (record is null) continue;
            faults.Add(new Fault(
                work is null
                    ? new Wording($"nothing on this vehicle leads to {state}, which the job ends with")
                    : new Wording(units => $"nothing on this vehicle leads to {state}, which \"{Words.Instruction(world.Beliefs, work.Step, units)}\" needs"),
                level >= Assurance.Protective, record));
        }
        return [.. faults.DistinctBy(fault => fault.Text.ToString())];
    }

    private static string Say(World world, Obstacle obstacle)
    {
        var rule = obstacle.Source?.Record.Rule is { } named ? $" (rule {Messages.Quote(named.Name)})" : "";
        if (obstacle.Kept is { } kept) return $"would break {Messages.Quote(kept.Source.Text)} while {world.Say(kept.During)}";
        if (obstacle.Wanted is { } wanted) return $"needs {world.Say(wanted)}{rule}";
        return obstacle.Earlier is { } earlier ? $"waits for {earlier.Step.Name}{rule}" : $"may not be done then{rule}";
    }
}
