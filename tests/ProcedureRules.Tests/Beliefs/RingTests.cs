using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Logic;
using Xunit;
using static ProcedureRules.Tests.Beliefs.World;

namespace ProcedureRules.Tests.Beliefs;

/// <summary>t from x, t from u, u from t: both must go when x goes, and weaken when x weakens.</summary>
public class RingTests
{
    private readonly World _world = new();

    [Theory]
    [InlineData(Truth.Yes, Assurance.Sure)]
    [InlineData(Truth.Unknown, Assurance.Provisional)]
    [InlineData(Truth.No, Assurance.No)]
    public void Ring_WhenItsRootChanges_FollowsIt(Truth root, Assurance expected)
    {
        var x = _world.YesNo("x");
        var (t, u) = (_world.Does("t"), _world.Does("u"));
        _world.Observe(x, true);
        _world.Rule([], [Say.Yes(x)], Conclude(t));
        _world.Rule([u], [], Conclude(t));
        _world.Rule([t], [], Conclude(u));
        _world.Rule([u], [], Conclude(_world.Does("v")));
        var beliefs = _world.Believe().With([new Supposition.Observed(x, Observations())]);
        foreach (var atom in new[] { t, u, _world.Does("v") })
            Assert.Equal((expected, expected), (beliefs.Required(atom), beliefs.Available(atom)));

        ProcedureRules.Facts.Observation[] Observations() => root == Truth.Unknown
            ? []
            : [new(x, ProcedureRules.Facts.Value.Of(root == Truth.Yes), ProcedureRules.Facts.Source.Measured)];
    }

    [Fact]
    public void Ring_WithARootOnAMoment_FallsOnTheRequiredLayerOnly()
    {
        var (t, u) = (_world.Does("t"), _world.Does("u"));
        _world.Rule([], [], true, Conclude(t));
        _world.Rule([u], [], Conclude(t));
        _world.Rule([t], [], Conclude(u));
        var beliefs = _world.Believe();
        Assert.Equal((Assurance.No, Assurance.Sure), (beliefs.Required(u), beliefs.Available(u)));
    }

    [Fact]
    public void Ring_OfRelations_FallsAndRanksWithItsRoot()
    {
        var (a, b, c) = (_world.Part("a"), _world.Part("b"), _world.Part("c"));
        var joined = _world.Relation("joined");
        var (ab, ba, bc) = (new Atom.Related(joined, a, b), new Atom.Related(joined, b, a), new Atom.Related(joined, b, c));
        var gap = _world.Gap("gap");
        _world.State(joined, a, b, Truth.Yes, ProcedureRules.Facts.Source.Estimated);
        _world.Rule([ab], [], Conclude(ba));
        _world.Rule([ba], [], Conclude(ab));
        _world.Rule([ba], [], Conclude(bc));
        _world.Rule([bc], [], Set(gap, Say.Millimetres(1)));
        var beliefs = _world.Believe();
        Assert.Equal(Truth.Yes, beliefs.Related(joined, b, c));
        Assert.Equal(ProcedureRules.Facts.Source.Estimated, beliefs.SourceOf(gap));
        var weaker = beliefs.With([new Supposition.RelationHolds(joined, a, b, Truth.Unknown)]);
        Assert.Equal(Truth.Unknown, weaker.Related(joined, b, a));
        var without = weaker.With([new Supposition.RelationHolds(joined, a, b, Truth.No)]);
        Assert.Equal((Truth.No, Truth.No, Truth.No), (without.Related(joined, a, b), without.Related(joined, b, a), without.Related(joined, b, c)));
    }
}
