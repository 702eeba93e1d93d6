using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;

namespace ProcedureRules.Beliefs;

/// <summary>Judges what a record says of a step on the supposition that the step occurs.</summary>
internal static class GivenStep
{
    /// <summary>The level of an effect; that the step occurs, and so that its part exists, is taken as sure, and moments as met.</summary>
    public static Assurance Level(BeliefState beliefs, Record record, int effect, Step step)
    {
        var premises = Assurance.Sure;
        var conditions = Truth.Yes;
        var atoms = beliefs.Network.Graph.Nodes.Atoms;
        foreach (var node in beliefs.PremisesOf(record))
        {
            var premise = atoms[node];
            if (premise is Atom.Occurs occurs && occurs.Step == step) continue;
            if (premise is Atom.Exists exists && ReferenceEquals(exists.Part, step.Part)) continue;
            var level = beliefs.AvailableAt(node);
            if (premise is Atom.Related) conditions = Kleene.And(conditions, Labeller.TruthOf(level));
            else if (level < premises) premises = level;
        }

        if (premises == Assurance.No || conditions == Truth.No) return Assurance.No;
        var tests = Labeller.TruthOfTests(record, beliefs);
        return RecordLabel.Level(premises, Kleene.And(conditions, tests), record.Effects[effect].IfUnknown);
    }
}
