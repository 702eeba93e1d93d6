using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Tests.Beliefs;
using Xunit;
using static ProcedureRules.Tests.Beliefs.World;

namespace ProcedureRules.Tests.Explaining;

/// <summary>Statements on relations and parts that contradict each other are told like those on facts.</summary>
public class StatementConflictTests
{
    private readonly World _world = new();

    [Fact]
    public void Conflicts_OfARelationStatedBothWays_NamesIt()
    {
        var (a, b) = (_world.Part("a"), _world.Part("b"));
        var joined = _world.Relation("joined");
        _world.State(joined, a, b, Truth.Yes).State(joined, a, b, Truth.No).State(joined, b, a, Truth.Yes).State(joined, b, a, Truth.No, Source.Measured);
        _world.Rule([new Atom.Related(joined, a, b)], [], Conclude(_world.Does("wipe")));
        _world.Rule([new Atom.Related(joined, b, a)], [], Conclude(_world.Does("dry")));

        var beliefs = _world.Believe();

        var conflict = Assert.Single(beliefs.Conflicts);
        Assert.Equal(new Reading.OfRelation(joined, a, b), conflict.About);
        Assert.Equal("joined(a, b): no against yes", ProcedureRules.Plans.Words.Conflict(conflict).ToString());
        Assert.Empty(beliefs.With([new Supposition.RelationHolds(joined, a, b, Truth.Yes)]).Conflicts);
    }

    [Fact]
    public void Conflicts_OfAPartStatedBothWays_NamesIt()
    {
        var a = _world.Part("a");
        _world.PartStatements.Add(new PartStatement(a, Truth.No, Source.Stated));
        _world.Rule([new Atom.Exists(a)], [], Conclude(_world.Does("wipe")));

        Assert.Equal("part a", Assert.Single(_world.Believe().Conflicts).About.Id);
    }
}
