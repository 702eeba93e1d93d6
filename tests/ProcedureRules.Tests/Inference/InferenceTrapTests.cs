using FsCheck.Xunit;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using Xunit;

namespace ProcedureRules.Tests.Inference;

/// <summary>What goes wrong easily in a rule engine, one test each.</summary>
public sealed class InferenceTrapTests
{
    [Fact]
    public void Update_OnlyReadingsDiffer_ReturnsTheSameRecordList()
    {
        var bench = new Bench();
        var box = bench.Part("box", bench.Box);
        bench.Rule("every part", Bench.Variables(bench.Root), [Bench.When(Bench.IsA(bench.Root), 0)], [Bench.Stop()]);
        var rules = bench.Build();
        var session = new InferenceSession(rules);
        var first = bench.Situation(rules, [box]);
        var before = Bench.Update(session, first);
        var reading = new Situation
        {
            Title = first.Title,
            Vocabulary = first.Vocabulary,
            Parts = first.Parts,
            PartStatements = first.PartStatements,
            Relations = first.Relations,
            Jobs = first.Jobs,
            States = first.States,
            Observations = [new Observation(new FactKey(box, null!), Value.Of(true), Source.Measured)],
        };
        var after = Bench.Update(session, reading);
        Assert.Same(before.Records, after.Records);
        Assert.Same(reading, after.Situation);
        // Statements copied into new lists say nothing new either.
        Assert.Same(before.Records, Bench.Update(session, bench.Situation(rules, [box])).Records);
    }

    [Fact]
    public void Update_OneOfTwoReasonsGoes_TheConclusionStays()
    {
        var bench = new Bench();
        var (box, lid) = (bench.Part("box", bench.Box), bench.Part("lid", bench.Lid));
        var remove = bench.Operation("remove", bench.Root, ["fitted"], "off");
        var two = Bench.Variables(bench.Root, bench.Root);
        bench.Rule("covered", two, [Bench.When(Bench.Related(bench.Covers), 0, 1)], [Bench.Do(remove, 0)]);
        bench.Rule("joined", two, [Bench.When(Bench.Related(bench.Joins), 0, 1)], [Bench.Do(remove, 0)]);
        bench.Rule("removed", Bench.Variables([null]), [Bench.When(new(PredicateSort.Does, "remove"), 0)], [Bench.Stop()]);
        var rules = bench.Build();
        var session = new InferenceSession(rules);
        var both = Bench.Update(session, bench.Situation(rules, [box, lid], [(bench.Covers, lid, box), (bench.Joins, lid, box)]));
        var one = Bench.Update(session, bench.Situation(rules, [box, lid], [(bench.Joins, lid, box)]));
        var none = Bench.Update(session, bench.Situation(rules, [box, lid]));
        Assert.Equal(["covered", "joined", "removed"], both.Records.Select(record => record.Rule!.Name));
        Assert.Equal(["joined", "removed"], one.Records.Select(record => record.Rule!.Name));
        Assert.Empty(none.Records);
    }

    [Fact]
    public void Update_RootOfARingGoes_TheRingFalls()
    {
        var bench = new Bench();
        var (box, lid) = (bench.Part("box", bench.Box), bench.Part("lid", bench.Lid));
        var two = Bench.Variables(bench.Root, bench.Root);
        bench.Rule("root", two, [Bench.When(Bench.Related(bench.Covers), 0, 1)], [Bench.Relate(bench.Joins, 0, 1)]);
        bench.Rule("ring", two, [Bench.When(Bench.Related(bench.Joins), 0, 1)], [Bench.Relate(bench.Joins, 1, 0)]);
        var rules = bench.Build();
        var session = new InferenceSession(rules);
        var standing = Bench.Update(session, bench.Situation(rules, [box, lid], [(bench.Covers, lid, box)]));
        var fallen = Bench.Update(session, bench.Situation(rules, [box, lid]));
        var again = Bench.Update(session, bench.Situation(rules, [box, lid], [(bench.Covers, lid, box)]));
        Assert.Equal(3, standing.Records.Count);
        Assert.Empty(fallen.Records);
        Assert.Equal(Described.Records(standing), Described.Records(again));
    }

    [Fact]
    public void Update_ConclusionFallsAndRisesInOneUpdate_StaysOneAtom()
    {
        var bench = new Bench();
        var (box, lid) = (bench.Part("box", bench.Box), bench.Part("lid", bench.Lid));
        var knock = bench.Operation("knock", bench.Lid, ["fitted", "loose", "off"], "loose");
        bench.Operation("remove", bench.Box, ["fitted"], "off");
        bench.Rule("at once", Bench.Variables(bench.Root, bench.Box), [Bench.When(Bench.Related(bench.Covers), 0, 1)], [bench.Need(1, "off")]);
        bench.Rule("by a step", Bench.Variables(bench.Lid, bench.Box), [Bench.When(Bench.Related(bench.Joins), 0, 1)], [Bench.Do(knock, 0)]);
        bench.Rule("later", Bench.Variables(null, bench.Box), [Bench.When(new(PredicateSort.Does, "knock"), 0)], [bench.Need(1, "off")]);
        var rules = bench.Build();
        var session = new InferenceSession(rules);
        Bench.Update(session, bench.Situation(rules, [box, lid], [(bench.Covers, lid, box)]));
        Bench.Update(session, bench.Situation(rules, [box, lid], [(bench.Joins, lid, box)]));
        var both = Bench.Update(session, bench.Situation(rules, [box, lid], [(bench.Joins, lid, box), (bench.Covers, lid, box)]));
        Assert.Single(both.Records, record => record.Mechanism == Mechanism.Reach);
        Assert.Equal(
            Described.Records(Bench.Infer(rules, bench.Situation(rules, [box, lid], [(bench.Joins, lid, box), (bench.Covers, lid, box)]))),
            Described.Records(both));
    }

    [Fact]
    public void Update_RuleFiresAgainAfterItsReasonCameBack_Concludes()
    {
        var bench = new Bench();
        var box = bench.Part("box", bench.Box);
        var remove = bench.Operation("remove", bench.Root, ["fitted"], "off");
        bench.Rule("loose now", Bench.Variables(bench.Box), [], [Bench.Do(remove, 0)], atStart: [new StateCondition(0, bench.Place, bench.In("loose"))]);
        var rules = bench.Build();
        var session = new InferenceSession(rules);
        for (var i = 0; i < 3; i++)
        {
            Assert.Empty(Bench.Update(session, bench.Situation(rules, [box])).Records);
            var loose = Bench.Update(session, bench.Situation(rules, [box], states: [(box, "loose")]));
            Assert.Contains(loose.Records, record => record.Rule?.Name == "loose now");
            Assert.Contains(loose.Records, record => record.Mechanism == Mechanism.Arrival);
        }
    }

    [Fact]
    public void Infer_TwoRulesConcludeTheSame_OneAtomObjectStandsForIt()
    {
        var bench = new Bench();
        var box = bench.Part("box", bench.Box);
        bench.Operation("remove", bench.Root, ["fitted"], "off");
        bench.Rule("one", Bench.Variables(bench.Box), [], [bench.Need(0, "off")]);
        bench.Rule("two", Bench.Variables(bench.Box), [], [bench.Need(0, "off")]);
        var rules = bench.Build();
        var records = Bench.Infer(rules, bench.Situation(rules, [box])).Records;
        var atoms = records.SelectMany(record => record.Effects.Select(effect => effect.Atom).Concat(record.Premises)).OfType<Atom>().ToList();
        Assert.All(atoms, atom => Assert.Same(atoms.First(other => other == atom), atom));
        Assert.Single(records, record => record.Mechanism == Mechanism.Reach);
    }

    [Fact]
    public void Infer_BudgetSpent_NamesTheBusiestRuleAndReturnsNoRecords()
    {
        var bench = new Bench();
        var parts = Enumerable.Range(0, 40).Select(i => bench.Part($"box{i}", bench.Box)).ToList();
        bench.Rule("quiet", Bench.Variables(bench.Box), [], [Bench.Stop()]);
        bench.Rule("everything with everything", Bench.Variables(bench.Box, bench.Box, bench.Box), [], [Bench.Stop()]);
        var rules = bench.Build();
        var session = new InferenceSession(rules);
        var result = session.Infer(bench.Situation(rules, parts), 1000, TestContext.Current.CancellationToken);
        Assert.False(result.IsSettled);
        Assert.Empty(result.Records);
        var diagnostic = Assert.Single(result.Diagnostics);
        Assert.Equal("error PR0601: the rules conclude more than 1000 records, so nothing is planned on them", diagnostic.ToLine());
        Assert.StartsWith("'everything with everything' has ", diagnostic.Notes[0].Text, StringComparison.Ordinal);
        // The next call starts afresh.
        Assert.True(Bench.Update(session, bench.Situation(rules, parts.Take(2))).IsSettled);
    }

    [Fact]
    public void Infer_Cancelled_ThrowsAndCanBeUsedAgain()
    {
        var bench = new Bench();
        var parts = Enumerable.Range(0, 60).Select(i => bench.Part($"box{i}", bench.Box)).ToList();
        bench.Rule("everything with everything", Bench.Variables(bench.Box, bench.Box, bench.Box, bench.Box), [], [Bench.Stop()]);
        var rules = bench.Build();
        var session = new InferenceSession(rules);
        using var soon = new CancellationTokenSource(TimeSpan.FromMilliseconds(30));
        Assert.ThrowsAny<OperationCanceledException>(() => session.Infer(bench.Situation(rules, parts), int.MaxValue, soon.Token));
        using var already = new CancellationTokenSource();
        already.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => session.Update(bench.Situation(rules, parts), cancellationToken: already.Token));
        Assert.Equal(16, Bench.Update(session, bench.Situation(rules, parts.Take(2))).Records.Count);
    }

    [Fact]
    public void Infer_RuleWithoutConditions_IsMatchedOnce()
    {
        var bench = new Bench();
        bench.Rule("always", [], [], [Bench.Stop()]);
        var rules = bench.Build();
        var record = Assert.Single(Bench.Infer(rules, bench.Situation(rules, [])).Records);
        Assert.Empty(record.Premises);
    }

    [Fact]
    public void Infer_OneFactMeetsTwoConditionsOfARule_GivesOneInstance()
    {
        var bench = new Bench();
        var box = bench.Part("box", bench.Box);
        bench.Rule("around", Bench.Variables(bench.Root, bench.Root),
            [Bench.When(Bench.Related(bench.Covers), 0, 1), Bench.When(Bench.Related(bench.Covers), 1, 0)], [Bench.Stop()]);
        var rules = bench.Build();
        Assert.Single(Bench.Infer(rules, bench.Situation(rules, [box], [(bench.Covers, box, box)])).Records);
    }

    [Theory]
    [InlineData(Truth.Yes, Source.Stated, Truth.No, Source.Assumed, true)]
    [InlineData(Truth.No, Source.Stated, Truth.Yes, Source.Assumed, false)]
    [InlineData(Truth.No, Source.Stated, Truth.Yes, Source.Stated, true)]
    [InlineData(Truth.Unknown, Source.Assumed, Truth.Unknown, Source.None, true)]
    [InlineData(Truth.No, Source.Measured, Truth.No, Source.Stated, false)]
    public void Infer_StatementsOnAPart_WhatTheBestSourcesDenyIsLeftOut(Truth one, Source from, Truth other, Source otherFrom, bool isPossible)
    {
        var bench = new Bench();
        var box = bench.Part("box", bench.Box);
        bench.Rule("there", Bench.Variables(bench.Box), [], [Bench.Stop()]);
        var rules = bench.Build();
        var situation = new Situation
        {
            Title = "two statements",
            Vocabulary = rules.Vocabulary,
            Parts = [box],
            PartStatements = [new PartStatement(box, one, from), new PartStatement(box, other, otherFrom)],
        };
        Assert.Equal(isPossible ? 1 : 0, Bench.Infer(rules, situation).Records.Count);
    }

    [Fact]
    public void Infer_TwoThreadsWithSessionsOfTheirOwn_AgreeWithOneThread()
    {
        var world = new RandomWorld([.. Enumerable.Range(0, 120).Select(i => (byte)(i * 37))], [.. Enumerable.Range(0, 60).Select(i => (byte)(i * 53))]);
        var situation = world.Now();
        var expected = Described.Records(Bench.Infer(world.Rules, situation));
        Parallel.For(0, 40, _ => Assert.Equal(expected, Described.Records(Bench.Infer(world.Rules, situation))));
        Assert.NotEmpty(expected);
    }

    [Property(MaxTest = 50)]
    public void Update_BackToWhereItWas_LeavesNothingBehind(byte[] rules, byte[] start, byte[] changes)
    {
        var world = new RandomWorld(rules, start, hasRings: true);
        var session = new InferenceSession(world.Rules);
        var first = world.Now();
        var before = Described.Records(Bench.Update(session, first));
        var dice = new Dice(changes);
        while (!dice.IsSpent) world.Change(dice);
        Bench.Update(session, world.Now());
        Assert.Equal(before, Described.Records(Bench.Update(session, first)));
    }
}
