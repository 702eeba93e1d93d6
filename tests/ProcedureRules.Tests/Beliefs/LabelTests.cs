using ProcedureRules.Beliefs;
using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using Xunit;
using static ProcedureRules.Tests.Beliefs.World;

namespace ProcedureRules.Tests.Beliefs;

public class LabelTests
{
    private readonly World _world = new();

    [Theory]
    [InlineData(IfUnknown.Do, Assurance.Protective)]
    [InlineData(IfUnknown.BehindCheck, Assurance.Provisional)]
    [InlineData(IfUnknown.Hold, Assurance.Held)]
    public void Effect_OfAnUnknownTest_IsWhatItsConclusionSays(IfUnknown ifUnknown, Assurance expected)
    {
        var (wet, step) = (_world.YesNo("wet"), _world.Does("dry"));
        var record = _world.Rule([], [Say.Yes(wet)], Conclude(step, ifUnknown), Conclude(_world.Does("wipe"), IfUnknown.Hold));
        var beliefs = _world.Believe();
        Assert.Equal((expected, expected), (beliefs.Required(step), beliefs.Available(step)));
        Assert.Equal(Assurance.Held, beliefs.Available(record, 1));
        Assert.Equal(Truth.Unknown, beliefs.TruthOf(step));
    }

    [Theory]
    [InlineData(true, Assurance.Sure)]
    [InlineData(false, Assurance.No)]
    public void Effect_OfAKnownTest_IsSureOrNot(bool wet, Assurance expected)
    {
        var (fact, step) = (_world.YesNo("wet"), _world.Does("dry"));
        _world.Observe(fact, wet);
        _world.Rule([], [Say.Yes(fact)], Conclude(step));
        Assert.Equal(expected, _world.Believe().Required(step));
    }

    // A counterexample to a level by the premise alone: the pack says "do it while unknown", whichever way the relation stands in the rule.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void UnknownRelation_WhetherItBindsOrIsTested_GivesTheSameLevel(bool binds)
    {
        var (a, b, step) = (_world.Part("a"), _world.Part("b"), _world.Does("hold up"));
        var carries = _world.Relation("carries");
        _world.State(carries, a, b, Truth.Unknown);
        _world.Rule(binds ? [new Atom.Related(carries, a, b)] : [], binds ? [] : [Say.Holds(carries, a, b)], Conclude(step, IfUnknown.Do));
        var beliefs = _world.Believe();
        Assert.Equal(Assurance.Protective, beliefs.Required(step));
        Assert.Equal(Truth.Unknown, beliefs.Related(carries, a, b));
    }

    [Fact]
    public void UnknownPart_GivesProvisionalWork()
    {
        var link = _world.Part("link", Truth.Unknown);
        var step = _world.Does("lower link");
        _world.Rule([new Atom.Exists(link)], [], Conclude(step, IfUnknown.Do));
        var beliefs = _world.Believe();
        Assert.Equal(Assurance.Provisional, beliefs.Required(step));
        Assert.Equal(Truth.Unknown, beliefs.Exists(link));
        Assert.Equal([link], beliefs.PartsOf(link.Kind));
        Assert.Equal(Assurance.No, beliefs.With([new Supposition.PartExists(link, Truth.No)]).Required(step));
        Assert.Equal(Assurance.Sure, beliefs.With([new Supposition.PartExists(link, Truth.Yes)]).Required(step));
    }

    [Fact]
    public void Statements_OfAHigherSource_HaveTheWord()
    {
        var (cooler, a, b) = (_world.Part("cooler", Truth.Yes, Source.Assumed), _world.Part("a"), _world.Part("b"));
        _world.PartStatements.Add(new(cooler, Truth.No, Source.Stated));
        var covers = _world.Relation("covers");
        _world.State(covers, a, b, Truth.Yes).State(covers, a, b, Truth.No);
        var beliefs = _world.Believe();
        Assert.Equal(Truth.No, beliefs.Exists(cooler));
        Assert.Empty(beliefs.PartsOf(cooler.Kind));
        Assert.Equal(Truth.Unknown, beliefs.Related(covers, a, b));
        Assert.Equal(Truth.No, beliefs.Related(covers, b, a));
    }

    [Fact]
    public void Record_OnAMoment_IsAvailableButNotRequired()
    {
        var (wanted, followed) = (_world.Does("block"), _world.Does("unblock"));
        var record = _world.Rule([], [], true, Conclude(wanted));
        _world.Rule([wanted], [], Conclude(followed));
        var beliefs = _world.Believe();
        Assert.Equal((Assurance.No, Assurance.Sure), (beliefs.Required(wanted), beliefs.Available(wanted)));
        Assert.Equal((Assurance.No, Assurance.Sure), (beliefs.Required(followed), beliefs.Available(followed)));
        Assert.Equal((Assurance.No, Assurance.Sure), (beliefs.Required(record, 0), beliefs.Available(record, 0)));
    }

    [Fact]
    public void Given_TheStep_ItsDoubtsDoNotCount()
    {
        var link = _world.Part("link", Truth.Unknown);
        var wet = _world.YesNo("wet");
        var step = _world.Step("lower", link);
        _world.Rule([new Atom.Exists(link)], [], Conclude(new Atom.Occurs(step)));
        var certain = _world.Rule([new Atom.Occurs(step), new Atom.Exists(link)], [], true, Conclude(_world.Does("a")));
        var open = _world.Rule([new Atom.Occurs(step), new Atom.Exists(link)], [Say.Yes(wet)], Conclude(_world.Does("b"), IfUnknown.Do));
        var beliefs = _world.Believe();
        Assert.Equal(Assurance.Provisional, beliefs.Available(certain, 0));
        Assert.Equal(Assurance.Sure, beliefs.Given(certain, 0, step));
        Assert.Equal(Assurance.Protective, beliefs.Given(open, 0, step));
        Assert.Equal(Assurance.Provisional, beliefs.Given(certain, 0, _world.Step("another")));
    }

    [Fact]
    public void Choice_OpenTakenAndReopened_LabelsItsOptions()
    {
        var key = new ChoiceKey.OfWays(_world.Vehicle, Height, StateSet.Of(1));
        var (jack, hoist) = (_world.Does("jack"), _world.Does("hoist"));
        _world.Rule([], [], Conclude(new Atom.Open(key)));
        _world.Rule([new Atom.Open(key), new Atom.Chosen(key, 0)], [], Conclude(jack));
        _world.Rule([new Atom.Open(key), new Atom.Chosen(key, 1)], [], Conclude(hoist));
        var open = _world.Believe();
        Assert.Null(open.Taken(key));
        Assert.Equal((Assurance.Held, Assurance.Held), (open.Required(jack), open.Required(hoist)));
        var taken = open.With([new Supposition.Takes(key, 1)]);
        Assert.Equal(1, taken.Taken(key));
        Assert.Equal((Assurance.No, Assurance.Sure), (taken.Required(jack), taken.Required(hoist)));
        Assert.Equal(Assurance.Held, taken.With([new Supposition.Takes(key, null)]).Required(jack));
    }

    [Fact]
    public void Job_AskedFor_IsSure()
    {
        var asked = new JobRequest(new() { Name = "job", Text = new("job") }, _world.Vehicle);
        _world.Jobs.Add(asked);
        _world.Rule([new Atom.Asked(asked)], [], Conclude(_world.Does("work")));
        Assert.Equal(Assurance.Sure, _world.Believe().Required(_world.Does("work")));
    }

    [Fact]
    public void Network_OfRecords_FindsThemByWhatTheyReadAndConclude()
    {
        var (wet, gap, step) = (_world.YesNo("wet"), _world.Gap("gap"), _world.Does("dry"));
        var set = _world.Rule([], [Say.Yes(wet)], Set(gap, Say.Millimetres(1)));
        var use = _world.Rule([new Atom.Exists(_world.Vehicle)], [Say.Less(gap, 2)], Conclude(step));
        var network = _world.Believe().Network;
        Assert.Equal([set, use], network.Records);
        Assert.Equal([set], network.Readers(new Reading.OfFact(wet)));
        Assert.Equal([use], network.Readers(new Reading.OfPart(_world.Vehicle)));
        Assert.Equal([new Reading.OfFact(gap), new Reading.OfPart(_world.Vehicle)], network.ReadingsOf(use));
        Assert.Equal([new RecordEffect(use, 0)], network.RecordsSupporting(step));
        Assert.Equal([new RecordEffect(set, 0)], network.RecordsWith<Conclusion.Set>());
        Assert.Equal([step], network.AtomsOf<Atom.Occurs>());
    }

    [Fact]
    public void Network_AskedAboutAStep_GivesWhatIsAttachedToIt()
    {
        var step = _world.Step("dry");
        var caution = new Conclusion.Caution(0, Signal.Danger, new() { Text = "hot", Render = (_, _, _) => "hot" }) { IfUnknown = IfUnknown.Do };
        var record = new ProcedureRules.Inference.Record
        {
            Mechanism = Mechanism.Rule,
            Binding = new([step]),
            Premises = [new Atom.Occurs(step)],
            Effects = [new(caution, null, null, IfUnknown.Do)],
        };
        _world.Records.Add(record);
        var network = _world.Believe().Network;
        Assert.Equal([new RecordEffect(record, 0)], network.RecordsAbout(step));
        Assert.Empty(network.RecordsAbout(_world.Step("other")));
    }

    [Fact]
    public void Supposition_OfWhatInferenceTookToBeOut_IsNotCovered()
    {
        var (a, b) = (_world.Part("a"), _world.Part("b", Truth.No));
        var covers = _world.Relation("covers");
        _world.State(covers, a, a, Truth.Unknown);
        var network = _world.Believe().Network;
        Assert.True(network.Covers(new Supposition.RelationHolds(covers, a, a, Truth.Yes)));
        Assert.False(network.Covers(new Supposition.RelationHolds(covers, a, b, Truth.Yes)));
        Assert.True(network.Covers(new Supposition.PartExists(a, Truth.No)));
        Assert.False(network.Covers(new Supposition.PartExists(b, Truth.Unknown)));
        Assert.False(network.Covers(new Supposition.Takes(new ChoiceKey.OfWays(a, Height, StateSet.Of(0)), 0)));
    }

    [Fact]
    public void Network_WithARingThroughNot_IsAnErrorThatNamesTheRules()
    {
        var (a, b) = (_world.Part("a"), _world.Part("b"));
        var covers = _world.Relation("covers");
        _world.Rule([], [Say.Not(Say.Holds(covers, a, b))], Conclude(new Atom.Related(covers, a, b)));
        var diagnostics = new DiagnosticBag();
        Assert.Null(BeliefNetwork.Build(_world.Result(), diagnostics));
        Assert.Equal(
            "error PR0650: the rule 'rule 1' reads 'covers(a, b)', which hangs on what it concludes\n", diagnostics.ToLines());
    }

    [Fact]
    public void Network_WithARingOfFacts_IsAnErrorThatNamesTheRules()
    {
        var (gap, drop) = (_world.Gap("gap"), _world.Gap("drop"));
        _world.Rule([], [], Set(gap, Say.Plus(drop, 1)));
        _world.Rule([], [Say.Less(gap, 3)], Set(drop, Say.Millimetres(2)));
        var diagnostics = new DiagnosticBag();
        Assert.Null(BeliefNetwork.Build(_world.Result(), diagnostics));
        Assert.Equal(
            "error PR0650: the rules 'rule 2', 'rule 1' form a ring: 'vehicle.gap' is read by one of them and hangs on what they conclude\n",
            diagnostics.ToLines());
    }

    // A record as one node would make a ring of this: its first value reads what its second sets.
    [Fact]
    public void Network_OfARuleThatSetsWhatItsOtherValueReads_IsNoRing()
    {
        var (gap, drop) = (_world.Gap("gap"), _world.Gap("drop"));
        _world.Rule([], [], Set(gap, Say.Plus(drop, 1)), Set(drop, Say.Millimetres(2)));
        Assert.True(_world.Believe().Fact(gap.Part, gap.Fact).Contains(Millimetres(3)));
    }
}
