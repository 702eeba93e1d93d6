using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Plans;

namespace ProcedureRules.Choosing;

/// <summary>What stands against a set of beliefs being planned: stops, forbidden steps that are required, demands that no value meets.</summary>
internal static class Faults
{
    /// <summary>The faults; while choices are open only those that stay whatever is chosen.</summary>
    public static IReadOnlyList<Fault> Of(BeliefState beliefs, Unsettled? unsettled = null)
    {
        var faults = new List<Fault>();
        var network = beliefs.Network;
        foreach (var source in Stops.Binding(beliefs))
        {
            // Whether a step has a purpose of its own may hang on what is still to be chosen.
            var level = beliefs.Available(source.Record, source.Index);
            if (unsettled is not null && (source.Record.Premises.Any(premise => premise is Atom.Occurs) || !unsettled.IsSettled(level, source.Record))) continue;
            var stop = (Conclusion.Stop)source.Effect.Conclusion!;
            faults.Add(new Fault(new Wording(stop.Text, beliefs, source.Record.Binding), level == Assurance.Sure, source.Record));
        }
        foreach (var band in beliefs.EmptyBands)
            faults.Add(new Fault(
                new Wording(units => $"no value of {band.Key} meets every demand: at least {band.Band.Least?.ToDisplay(units)}, at most {band.Band.Most?.ToDisplay(units)}"),
                true, band.Demands[0].Record));
        var prohibitions = new Prohibitions(beliefs);
        foreach (var atom in network.AtomsOf<Atom.Occurs>())
        {
            var required = beliefs.Required(atom);
            if (required < Assurance.Provisional || prohibitions.Of(atom.Step) is not { } source) continue;
            var level = beliefs.Given(source.Record, source.Index, atom.Step);
            if (unsettled is not null && !(unsettled.IsSettled(required, network.Graph.Nodes.Of(atom)) && unsettled.IsSettled(level, source.Record))) continue;
            var isSure = level == Assurance.Sure && required >= Assurance.Protective;
            var ending = isSure ? "and may not be done" : "and it is not known whether it may be done";
            faults.Add(new Fault(new Wording(units => $"\"{Words.Instruction(beliefs, atom.Step, units)}\" would be needed, {ending}"), isSure, source.Record, atom));
        }
        return [.. faults.OrderBy(fault => fault.Text.ToString(), StringComparer.Ordinal)];
    }
}
