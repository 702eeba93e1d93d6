using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using ProcedureRules.Diagnostics;
using ProcedureRules.Explaining;
using ProcedureRules.Quantities;
using ProcedureRules.Reports;
using ProcedureRules.Tests.Engine;
using Xunit;

namespace ProcedureRules.Tests.Explaining;

public class WhatIfTests
{
    private static readonly string[] Sayings =
    [
        "oil_pan.drop_available=6 in", "oil_pan.drop_available=1 in", "oil_pan.condition=sound", "fan_shroud.pieces=two_piece", "heater_hose.gap=1 in",
        "traps(starter, dust_cover)=no", "part starter=no", "vehicle.lift_at_hand=no", "exhaust.rust=heavy", "vehicle.hoist_at_hand=yes",
    ];

    [Fact]
    public void Suppose_APanThatDrops_TellsTheRaisingThatGoes()
    {
        var difference = Suppose("oil_pan.drop_available=6 in");
        Assert.Contains(difference.StepsOut, step => step.Id == "raise_engine(engine)");
        Assert.Empty(difference.StepsIn);
        Assert.Contains(difference.Out, item => item is { Sort: PlanItemSort.Caution, Step: "raise_engine(engine)" });
        Assert.True(difference.After.Labour.High < difference.Before.Labour.High);
        Assert.False(difference.IsNothing);
    }

    [Fact]
    public void Suppose_WhatIsSoAlready_ChangesNothing()
    {
        Assert.True(Suppose("fan_shroud.pieces=one_piece").IsNothing);
        Assert.True(Suppose().IsNothing);
        Assert.Equal("Nothing changes in the plan.", Assert.Single(DifferenceText.Lines(Suppose(), UnitSystem.Us)).Text);
    }

    [Fact]
    public void Suppose_AMistake_SaysSoAndComparesNothing()
    {
        var result = Shipped.Open("oil-pan").Suppose(["oil_pan.drop_availible=6 in"], TestContext.Current.CancellationToken);
        Assert.Null(result.Difference);
        Assert.Contains("did you mean 'drop_available'?", Assert.Single(result.Diagnostics).Message, StringComparison.Ordinal);
    }

    [Property(MaxTest = 12)]
    public Property Suppose_AnyStatements_ComesToWhatStatingThemDoesAndLeavesTheSessionAsItWas() => Prop.ForAll(
        Gen.Elements(Sayings).ListOf().Resize(3).ToArbitrary(),
        sayings =>
        {
            var session = Shipped.Open("oil-pan");
            var before = Text(session);
            var supposed = session.Suppose(sayings, TestContext.Current.CancellationToken);
            var isUntouched = Text(session) == before;
            var mistakes = sayings.SelectMany(session.State).Any(mistake => mistake.Severity == Severity.Error);
            return isUntouched && (mistakes // such as a relation of a part that is not there: nothing is supposed by halves
                ? supposed.After is null
                : supposed.After?.Plan is { } after && Text(session) == PlanJson.Write(after, UnitSystem.Us));
        });

    [Theory]
    [InlineData("a b c d", "a b c d", "")]
    [InlineData("a b c d", "b c d a", "a")]
    [InlineData("a b c d", "a c b d", "c")]
    [InlineData("a b c", "x c y a z", "c")]
    [InlineData("", "a", "")]
    public void CommonOrder_OfTwoSequences_LeavesOutTheFewestThatMoved(string before, string after, string moved)
    {
        var (one, two) = (before.Split(' ', StringSplitOptions.RemoveEmptyEntries), after.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        var kept = CommonOrder.Of(one, two);
        Assert.Equal(moved, string.Join(' ', one.Intersect(two).Where(item => !kept.Contains(item))));
    }

    private static PlanDifference Suppose(params string[] statements)
    {
        var result = Shipped.Open("oil-pan").Suppose(statements, TestContext.Current.CancellationToken);
        Assert.Empty(result.Diagnostics);
        return result.Difference!;
    }

    private static string Text(ProcedureSession session) => PlanJson.Write(Shipped.PlanOf(session), UnitSystem.Us);
}
