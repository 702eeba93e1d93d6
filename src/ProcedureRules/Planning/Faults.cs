using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;

namespace ProcedureRules.Planning;

/// <summary>What stands against a set of beliefs being planned: stops, forbidden steps that are required, demands that no value meets.</summary>
internal static class Faults
{
    public static IReadOnlyList<Fault> Of(BeliefState beliefs)
    {
        var faults = new List<Fault>();
        var network = beliefs.Network;
        foreach (var source in Stops.Binding(beliefs))
        {
            var stop = (Conclusion.Stop)source.Effect.Conclusion!;
            var isSure = beliefs.Available(source.Record, source.Index) == Assurance.Sure;
            faults.Add(new Fault(new Wording(stop.Text, beliefs, source.Record.Binding), isSure, source.Record));
        }
        foreach (var band in beliefs.EmptyBands)
            faults.Add(new Fault(
                new Wording(units => $"no value of {band.Key} meets every demand: at least {band.Band.Least?.ToDisplay(units)}, at most {band.Band.Most?.ToDisplay(units)}"),
                true, band.Demands[0].Record));
        var prohibitions = Prohibitions.Under(beliefs);
        foreach (var atom in network.AtomsOf<Atom.Occurs>())
        {
            if (beliefs.Required(atom) < Assurance.Provisional || prohibitions.Of(atom.Step) is not { } source) continue;
            var level = beliefs.Given(source.Record, source.Index, atom.Step);
            faults.Add(new Fault(
                new Wording(units => $"\"{Words.Instruction(beliefs, atom.Step, units)}\" would be needed and may not be done"),
                level == Assurance.Sure && beliefs.Required(atom) >= Assurance.Protective, source.Record, atom));
        }
        return [.. faults.OrderBy(fault => fault.Text.ToString(), StringComparer.Ordinal)];
    }
}
