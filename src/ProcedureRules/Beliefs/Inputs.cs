using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Logic;

namespace ProcedureRules.Beliefs;

/// <summary>Puts statements, jobs and choices into the labels.</summary>
internal sealed class Inputs(BeliefNetwork network, Labels labels)
{
    private readonly NodeIndex _nodes = network.Graph.Nodes;

    /// <summary>Puts in the situation as stated.</summary>
    public void SetAll()
    {
        var situation = network.Result.Situation;
        var relations = Statements.OfRelations(situation);
        for (var atom = 0; atom < _nodes.Atoms.Count; atom++)
        {
            labels.Inputs.Set(atom, _nodes.Atoms[atom] switch
            {
                Atom.Exists exists => Statements.OfPart(situation, exists.Part),
                Atom.Related related => relations.GetValueOrDefault((related.Relation, related.A, related.B)),
                Atom.Asked asked => AtomInput.Of(Kleene.Of(situation.Jobs.Contains(asked.Request)), Source.Stated),
                Atom.Chosen => new(Assurance.Held, Source.Stated),
                _ => default,
            });
        }

        for (var fact = 0; fact < _nodes.Facts.Count; fact++) labels.Observations.Set(fact, []);
        foreach (var group in situation.Observations.GroupBy(observation => observation.Fact))
            labels.Observations.Set(_nodes.Of(group.Key), [.. group]);
    }

    /// <summary>Puts in a supposition; gives the nodes to look at again.</summary>
    public IEnumerable<int> Apply(Supposition supposition) => supposition switch
    {
        Supposition.Observed observed => Observe(observed),
        Supposition.PartExists exists => Put(new Atom.Exists(exists.Part), AtomInput.Of(exists.Truth, exists.Source)),
        Supposition.RelationHolds holds =>
            Put(new Atom.Related(holds.Relation, holds.A, holds.B), AtomInput.Of(holds.Truth, holds.Source)),
        Supposition.JobAsked asked => Put(new Atom.Asked(asked.Request), AtomInput.Of(asked.Truth, Source.Stated)),
        Supposition.Takes takes => Take(takes),
        _ => [],
    };

    private int[] Observe(Supposition.Observed observed)
    {
        var fact = _nodes.Of(observed.Key);
        if (fact < 0) return [];
        labels.Observations.Set(fact, observed.Observations);
        return [_nodes.FactNode(fact)];
    }

    private int[] Put(Atom atom, AtomInput input)
    {
        var index = _nodes.Of(atom);
        if (index < 0) return [];
        labels.Inputs.Set(index, input);
        return [index];
    }

    private IReadOnlyList<int> Take(Supposition.Takes takes)
    {
        var options = network.OptionsOf(takes.Choice);
        foreach (var option in options)
        {
            var level = takes.Option is not { } taken ? Assurance.Held
                : taken == ((Atom.Chosen)_nodes.Atoms[option]).Option ? Assurance.Sure : Assurance.No;
            labels.Inputs.Set(option, new(level, Source.Stated));
        }

        return options;
    }
}
