using ProcedureRules.Language;
using ProcedureRules.Packs;
using Xunit;

namespace ProcedureRules.Tests.Inference;

public sealed class MechanismTests
{
    private readonly Bench _bench = new();

    [Fact]
    public void Reach_OneWay_ConcludesTheStepItsStartsAndItsUndoing()
    {
        var remove = _bench.Operation("remove", _bench.Root, ["loose"], "off");
        _bench.Operation("refit", _bench.Root, ["off"], "before", remove);
        _bench.Operation("loosen", _bench.Root, ["fitted"], "loose");
        Assert.Equal(
            [
                "Rule wants[box]: exists(box) => wanted(box.place is off)",
                "Reach [box]: wanted(box.place is loose) => occurs(loosen(box))",
                "Reach [box]: wanted(box.place is off) => occurs(remove(box))",
                "Start [remove(box)]: occurs(remove(box)) => wanted(box.place is loose)",
                "Undo [remove(box)]: occurs(remove(box)) => occurs(refit(box))",
            ],
            Infer(_bench.Need(0, "off")));
    }

    [Fact]
    public void Reach_SeveralWays_OpensAChoiceBetweenThem()
    {
        _bench.Operation("unbolt", _bench.Root, ["fitted"], "off");
        _bench.Operation("cut", _bench.Root, ["fitted", "loose"], "off");
        _bench.Operation("shake", _bench.Root, ["loose"], "off");
        Assert.Equal(
            [
                "Rule wants[box]: exists(box) => wanted(box.place is off)",
                "Reach [box]: wanted(box.place is off) => open(ways to box.place is off)",
                "Alternative [box]: chosen(ways to box.place is off, 0) & open(ways to box.place is off) => occurs(unbolt(box))",
                "Alternative [box]: chosen(ways to box.place is off, 1) & open(ways to box.place is off) => occurs(cut(box))",
            ],
            Infer(_bench.Need(0, "off")));
    }

    [Fact]
    public void Reach_OnArrivalElsewhere_PrefersWaysFromThere()
    {
        _bench.Operation("unbolt", _bench.Root, ["fitted"], "off");
        _bench.Operation("shake", _bench.Root, ["loose"], "off");
        var lines = Infer(_bench.Need(0, "off"), "loose");
        Assert.Contains("Reach [box]: wanted(box.place is off) => occurs(shake(box))", lines);
        Assert.DoesNotContain(lines, line => line.StartsWith("Alternative", StringComparison.Ordinal));
    }

    [Fact]
    public void Reach_OnlyAnUndoingLeadsThere_TakesIt()
    {
        var remove = _bench.Operation("remove", _bench.Root, ["fitted"], "off");
        _bench.Operation("refit", _bench.Root, ["off"], "fitted", remove);
        Assert.Contains("Reach [box]: wanted(box.place is fitted) => occurs(refit(box))", Infer(_bench.Need(0, "fitted"), "off"));
    }

    [Fact]
    public void Reach_NothingLeadsThere_LeavesTheWantUnanswered() =>
        Assert.Equal(["Rule wants[box]: exists(box) => wanted(box.place is off)"], Infer(_bench.Need(0, "off")));

    [Fact]
    public void Reach_StateIsSoNow_ConcludesNothing() =>
        Assert.Equal(["Rule wants[box]: exists(box) => wanted(box.place is fitted)"], Infer(_bench.Need(0, "fitted")));

    [Fact]
    public void Start_OfAnUndoingStepThatFollowsItsStep_WantsNothing()
    {
        var remove = _bench.Operation("remove", _bench.Root, ["fitted"], "off");
        _bench.Operation("refit", _bench.Root, ["off"], "fitted", remove);
        Assert.DoesNotContain(Infer(_bench.Need(0, "off")), line => line.StartsWith("Start", StringComparison.Ordinal));
    }

    [Fact]
    public void Arrival_AspectNotNormal_WantsItNormalUnlessAMark()
    {
        var box = _bench.Part("box", _bench.Box);
        var rules = _bench.Build();
        var situation = new ProcedureRules.Facts.Situation
        {
            Title = "arrived apart",
            Vocabulary = rules.Vocabulary,
            Parts = [box],
            States = new Dictionary<ProcedureRules.Facts.StateVariable, int> { [new(box, _bench.Place)] = 2, [new(box, _bench.Mark)] = 1 },
        };
        Assert.Equal(
            ["Arrival [box]: exists(box) => wanted(box.place is fitted)"], Described.Records(Bench.Infer(rules, situation)));
    }

    [Fact]
    public void Option_OfARulesChoice_RestsOnTheOpenChoiceAndOnBeingChosen()
    {
        var polish = _bench.Operation("polish", _bench.Root, ["fitted", "loose", "off"], "loose");
        Assert.Equal(
            [
                "Rule wants[box]: exists(box) => open(wants[box]#0)",
                "Option wants[box]: chosen(wants[box]#0, 0) & open(wants[box]#0) => Stop",
                "Option wants[box]: chosen(wants[box]#0, 1) & open(wants[box]#0) => open(wants[box]#1)",
                "Option wants[box]: chosen(wants[box]#1, 0) & open(wants[box]#1) => occurs(polish(box))",
            ],
            Infer(Bench.OneOf([Bench.Stop()], [Bench.OneOf([Bench.Do(polish, 0)])])));
    }

    [Fact]
    public void Moments_OfARule_AreGroundOnTheBinding()
    {
        var box = _bench.Part("box", _bench.Box);
        _bench.Rule("while loose", Bench.Variables(_bench.Box), [], [Bench.Stop()], moments: [new StateCondition(0, _bench.Place, _bench.In("loose"))]);
        var rules = _bench.Build();
        var record = Assert.Single(Bench.Infer(rules, _bench.Situation(rules, [box])).Records);
        Assert.Equal("box.place is loose", Assert.Single(record.Moments).ToString());
    }

    private IReadOnlyList<string> Infer(Conclusion conclusion, string stateNow = "fitted")
    {
        var box = _bench.Part("box", _bench.Box);
        // Arrival is another test's matter: the mechanism only shows where the state now is not normal.
        _bench.Rule("wants", Bench.Variables(_bench.Box), [], [conclusion]);
        var rules = _bench.Build();
        var situation = _bench.Situation(rules, [box], states: [(box, stateNow)]);
        return Described.Records(Bench.Infer(rules, situation));
    }
}
