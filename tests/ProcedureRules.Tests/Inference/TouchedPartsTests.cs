using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Packs;
using Xunit;

namespace ProcedureRules.Tests.Inference;

/// <summary>A step touches and moves whole kinds: such a fact rests on the step and on the part, and either may come and go.</summary>
public sealed class TouchedPartsTests
{
    private readonly Bench _bench = new();
    private readonly Part _box;
    private readonly Part _lid;
    private readonly Operation _lift;

    public TouchedPartsTests()
    {
        _box = _bench.Part("box", _bench.Box);
        _lid = _bench.Part("lid", _bench.Lid);
        _lift = _bench.Operation("lift", _bench.Box, ["fitted"], "off", touches: [_bench.Lid], moves: [_bench.Lid]);
        _bench.Rule("asked", Bench.Variables(_bench.Root), [Bench.When(new(PredicateSort.Job, "renew"), 0)], [Bench.Do(_lift, 0)]);
    }

    [Theory]
    [InlineData(PredicateSort.Touches)]
    [InlineData(PredicateSort.Moves)]
    public void Update_PartLeavesAndReturnsWhileTheStepStands_IsTouchedAgain(PredicateSort sort)
    {
        _bench.Rule("met", Bench.Variables(null, _bench.Lid), [Bench.When(new(sort), 0, 1)], [Bench.Stop()]);
        var rules = _bench.Build();
        var session = new InferenceSession(rules);
        for (var i = 0; i < 3; i++)
        {
            Assert.Equal(["asked", "met"], Names(Bench.Update(session, _bench.Situation(rules, [_box, _lid], jobsOn: [_box]))));
            Assert.Equal(["asked"], Names(Bench.Update(session, _bench.Situation(rules, [_box], jobsOn: [_box]))));
        }
    }

    [Fact]
    public void Update_StepGoneBeforeThePartReturns_NothingIsTouched()
    {
        _bench.Rule("met", Bench.Variables(null, _bench.Lid), [Bench.When(new(PredicateSort.Touches), 0, 1)], [Bench.Stop()]);
        var rules = _bench.Build();
        var session = new InferenceSession(rules);
        Bench.Update(session, _bench.Situation(rules, [_box, _lid], jobsOn: [_box]));
        Bench.Update(session, _bench.Situation(rules, [_box]));
        Assert.Empty(Names(Bench.Update(session, _bench.Situation(rules, [_box, _lid]))));
        Assert.Equal(["asked", "met"], Names(Bench.Update(session, _bench.Situation(rules, [_box, _lid], jobsOn: [_box]))));
    }

    [Fact]
    public void Update_RingOverATouchedPart_FallsWithItsRoot()
    {
        _bench.Rule("still joined", Bench.Variables(null, _bench.Lid, _bench.Root),
            [Bench.When(new(PredicateSort.Touches), 0, 1), Bench.When(Bench.Related(_bench.Joins), 1, 2)], [Bench.Relate(_bench.Joins, 1, 2)]);
        _bench.Rule("covered", Bench.Variables(_bench.Root, _bench.Root),
            [Bench.When(Bench.Related(_bench.Covers), 0, 1)], [Bench.Relate(_bench.Joins, 0, 1)]);
        var rules = _bench.Build();
        var session = new InferenceSession(rules);
        var covered = Bench.Update(session, _bench.Situation(rules, [_box, _lid], [(_bench.Covers, _lid, _box)], [_box]));
        var bare = Bench.Update(session, _bench.Situation(rules, [_box, _lid], jobsOn: [_box]));
        Assert.Equal(["asked", "still joined", "covered"], Names(covered));
        Assert.Equal(["asked"], Names(bare));
    }

    [Fact]
    public void Infer_OperationTouchesTheKindItWorksOn_ThePartIsTouchedOnce()
    {
        var rub = _bench.Operation("rub", _bench.Lid, ["fitted"], "loose", touches: [_bench.Lid, _bench.Root]);
        _bench.Rule("rubbed", Bench.Variables(_bench.Lid), [], [Bench.Do(rub, 0)]);
        _bench.Rule("met", Bench.Variables(null, _bench.Root), [Bench.When(new(PredicateSort.Touches), 0, 1)], [Bench.Stop()]);
        var rules = _bench.Build();
        Assert.Equal(["rubbed", "met", "met"], Names(Bench.Infer(rules, _bench.Situation(rules, [_box, _lid]))));
    }

    private static IEnumerable<string> Names(InferenceResult result) =>
        result.Records.Where(record => record.Mechanism == Mechanism.Rule).Select(record => record.Rule!.Name);
}
