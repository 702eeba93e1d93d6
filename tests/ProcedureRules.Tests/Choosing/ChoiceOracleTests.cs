using FsCheck.Xunit;
using ProcedureRules.Beliefs;
using ProcedureRules.Choosing;
using ProcedureRules.Plans;
using ProcedureRules.Tests.Planning;
using Xunit;

namespace ProcedureRules.Tests.Choosing;

/// <summary>Against exact solvers: the CP-SAT of OR-Tools on programs of its own form, plain enumeration of all choices on random worlds.</summary>
public sealed class ChoiceOracleTests
{
    private const int Programs = 300;

    [Fact]
    public void Choose_RandomProgramsWithNegation_CostWhatTheSolverProves()
    {
        var random = new Random(11);
        var feasible = 0;
        for (var i = 0; i < Programs; i++)
        {
            var program = new ChoiceProgram(random);
            var best = program.Best();
            var found = Choose(program.Believe());
            Assert.True(best is null == (found is null), $"program {i}\n{program.ToPack()}");
            if (best is not { } optimum || found is null) continue;
            feasible++;
            Assert.Null(found.Bound);
            Assert.True(
                (found.Cost.Twice, found.Cost.Most, Ranks(found)) == (optimum.Twice * 60_000, optimum.Most * 60_000, optimum.Ranks),
                $"program {i}: {optimum} against {Ranks(found)} {found.Cost}\n{program.ToPack()}");
        }

        Assert.InRange(feasible, Programs / 2, Programs);
    }

    [Property(MaxTest = 300)]
    public void Choose_RandomWorld_NoCombinationIsBetter(byte[] bytes)
    {
        var beliefs = RandomShop.From(bytes).Believe();
        var book = ChoiceBook.Of(beliefs.Network);
        if (book.Keys.Aggregate(1L, (count, key) => count * (book.Options(key).Count + 1)) > 3000) return;

        var found = new Chooser(book, PlannerOptions.Default, TestContext.Current.CancellationToken).From(beliefs).FirstOrDefault(decision => decision.Faults.Count == 0);

        Assert.Equal(EveryChoice.Best(beliefs, book), found is null ? null : EveryChoice.KeyOf(found.Beliefs, book));
    }

    private static Decision? Choose(BeliefState beliefs) =>
        new Chooser(ChoiceBook.Of(beliefs.Network), PlannerOptions.Default, TestContext.Current.CancellationToken)
            .From(beliefs).FirstOrDefault(decision => decision.Faults.Count == 0);

    private static long Ranks(Decision decision)
    {
        var book = ChoiceBook.Of(decision.Beliefs.Network);
        return decision.Taken.Sum(taken => book.StepsDown(taken.Key, taken.Option) is var down && down == 2 ? 7 : down);
    }
}
