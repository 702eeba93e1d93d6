using System.Text;
using ProcedureRules.Beliefs;
using ProcedureRules.Explaining;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;
using ProcedureRules.Tests.Beliefs;
using Xunit;
using static ProcedureRules.Tests.Beliefs.World;

namespace ProcedureRules.Tests.Explaining;

public class WhyTreeTests
{
    private readonly World _world = new();

    [Fact]
    public void Why_OfAStep_GoesDownToWhatWasStated()
    {
        var (dust, gap) = (_world.YesNo("dust"), _world.Gap("gap"));
        _world.Observations.Add(new(dust, Value.Of(true), Source.Measured, "seen from below"));
        _world.Observe(gap, Millimetres(2));
        _world.Rule([], [Say.Yes(dust), Say.Less(gap, 3)], Conclude(_world.Does("wipe")));
        _world.Rule([_world.Does("wipe")], [], Conclude(_world.Does("dry")));
        Assert.Equal(
            """
            dry the vehicle
              [rule 2]
                wipe the vehicle
                  [rule 1]
                    vehicle dust is yes: yes
                      vehicle dust: yes, measured (seen from below)
                    vehicle gap is less than 3 mm: yes
                      vehicle gap: 2 mm, stated

            """,
            Show(new WhyTree(_world.Believe()).Of(_world.Step("dry"))));
    }

    [Fact]
    public void Why_OfADerivedFact_NamesWhatItFollowsFrom()
    {
        var (drop, gap) = (_world.Gap("drop"), _world.Gap("gap"));
        _world.Observe(drop, Millimetres(2), Source.Assumed);
        _world.Rule([], [Say.Less(drop, 5)], Set(gap, Say.Millimetres(4)));
        Assert.Equal(
            """
            vehicle gap: 4 mm, assumed
              [rule 1]
                vehicle drop is less than 5 mm: yes
                  vehicle drop: 2 mm, assumed

            """,
            Show(new WhyTree(_world.Believe()).Of(new Reading.OfFact(gap))));
    }

    // A counterexample to counting every relation with a rule as concluded: this one is stated, and its ring says nothing of its own.
    [Fact]
    public void Why_OfAStatedRelationInARing_IsTheStatement()
    {
        var (a, b) = (_world.Part("a"), _world.Part("b"));
        var joined = _world.Relation("joined to");
        _world.State(joined, a, b, Truth.Yes, Source.Estimated);
        _world.Rule([new Atom.Related(joined, a, b)], [], Conclude(new Atom.Related(joined, b, a)));
        _world.Rule([new Atom.Related(joined, b, a)], [], Conclude(new Atom.Related(joined, a, b)));
        Assert.Equal(
            """
            joined to: yes
              [rule 1]
                joined to: yes, estimated

            """,
            Show(new WhyTree(_world.Believe()).Of(new Atom.Related(joined, b, a))));
    }

    // What first makes it possible is the shorter way; what makes it sure is the answer to why it is sure.
    [Fact]
    public void Why_OfSomethingSure_IsWhatMakesItSure()
    {
        var wet = _world.YesNo("wet");
        _world.Rule([], [Say.Yes(wet)], Conclude(_world.Does("dry")));
        _world.Rule([], [], Conclude(_world.Does("wash")));
        _world.Rule([_world.Does("wash")], [], Conclude(_world.Does("rinse")));
        _world.Rule([_world.Does("rinse")], [], Conclude(_world.Does("dry")));
        var why = Show(new WhyTree(_world.Believe()).Of(_world.Step("dry")));
        Assert.StartsWith("dry the vehicle\n  [rule 4]\n    rinse the vehicle\n", why, StringComparison.Ordinal);
        Assert.DoesNotContain("wet", why, StringComparison.Ordinal);
    }

    // The step protects, since the relation is open; that the relation may hold must not be explained by the step in turn.
    [Fact]
    public void Why_AcrossLevels_DoesNotRunInACircle()
    {
        var (wet, dirty) = (_world.YesNo("wet"), _world.YesNo("dirty"));
        var (a, b) = (_world.Part("a"), _world.Part("b"));
        var relation = new Atom.Related(_world.Relation("touches"), a, b);
        _world.Rule([relation], [], Conclude(_world.Does("hold up"), IfUnknown.Do));
        _world.Rule([_world.Does("hold up")], [Say.Yes(wet)], Conclude(relation, IfUnknown.BehindCheck));
        _world.Rule([], [Say.Yes(dirty)], Conclude(relation, IfUnknown.Hold));
        var beliefs = _world.Believe();
        Assert.Equal((Assurance.Protective, Assurance.Provisional), (beliefs.Required(_world.Does("hold up")), beliefs.Required(relation)));
        var why = Show(new WhyTree(beliefs).Of(_world.Step("hold up")));
        Assert.Contains("[rule 3]", why, StringComparison.Ordinal);
        Assert.DoesNotContain("[rule 2]", why, StringComparison.Ordinal);
    }

    [Fact]
    public void Why_WithASharedPart_TellsItOnce()
    {
        _world.Rule([], [], Conclude(_world.Does("wash")));
        _world.Rule([_world.Does("wash")], [], Conclude(_world.Does("left")), Conclude(_world.Does("right")));
        _world.Rule([_world.Does("left"), _world.Does("right")], [], Conclude(_world.Does("dry")));
        Assert.Equal(
            """
            dry the vehicle
              [rule 3]
                left the vehicle
                  [rule 2]
                    wash the vehicle
                      [rule 1]
                right the vehicle
                  [rule 2]
                    wash the vehicle (as above)

            """,
            Show(new WhyTree(_world.Believe()).Of(_world.Step("dry"))));
    }

    [Fact]
    public void Why_OfALongChain_StopsAtItsDepthAndSaysSo()
    {
        _world.Rule([], [], Conclude(_world.Does("step 0")));
        for (var i = 1; i < 200; i++) _world.Rule([_world.Does($"step {i - 1}")], [], Conclude(_world.Does($"step {i}")));
        var why = Show(new WhyTree(_world.Believe(), deepest: 6).Of(_world.Step("step 199")));
        Assert.EndsWith("(and so on)\n", why, StringComparison.Ordinal);
        Assert.InRange(why.Count(c => c == '\n'), 5, 9);
    }

    [Fact]
    public void Why_OfAnOpenCondition_SaysThatItIsNotKnown()
    {
        var wet = _world.YesNo("wet");
        _world.Rule([], [Say.Yes(wet)], Conclude(_world.Does("dry")));
        var why = Show(new WhyTree(_world.Believe()).Of(_world.Step("dry")));
        Assert.Contains("vehicle wet is yes: not known\n", why, StringComparison.Ordinal);
        Assert.Contains("vehicle wet: no or yes, not known\n", why, StringComparison.Ordinal);
    }

    private static string Show(WhyNode node)
    {
        var text = new StringBuilder();
        Write(node, 0);
        return text.ToString();

        void Write(WhyNode node, int depth)
        {
            text.Append(' ', depth * 2).Append(node.Rule is null ? node.Text.In(UnitSystem.Si) : $"[{node.Rule}]").Append('\n');
            foreach (var because in node.Because) Write(because, depth + 1);
        }
    }
}
