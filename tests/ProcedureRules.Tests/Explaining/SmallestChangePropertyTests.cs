using FsCheck.Xunit;
using ProcedureRules.Asking;
using ProcedureRules.Beliefs;
using ProcedureRules.Explaining;
using ProcedureRules.Language;
using ProcedureRules.Planning;
using ProcedureRules.Plans;
using ProcedureRules.Tests.Planning;
using Xunit;

namespace ProcedureRules.Tests.Explaining;

/// <summary>What is said to bring a step in does, nothing less of it does, and where nothing can, nothing does: tried out in generated worlds.</summary>
public sealed class SmallestChangePropertyTests
{
    [Property(MaxTest = 5)]
    public void Change_ThatIsSaidToBringAStepIn_DoesAndNoPartOfItDoes(byte[] bytes)
    {
        foreach (var (plan, beliefs, operation, answer) in Missing(bytes))
        {
            if (answer.Search != ChangeSearch.Found) continue;
            var change = answer.Change.Select(fact => fact.Supposition).ToList();
            Assert.NotEmpty(change);
            Assert.True(Has(Try(beliefs.With(change)), operation), $"{operation} after {string.Join(", ", change)} in {plan.Steps.Count} steps");
            if (change.Count < 2) continue;
            Assert.All(change, part => Assert.False(Has(Try(beliefs.With([.. change.Where(other => other != part)])), operation), $"{operation} without {part}"));
        }
    }

    /// <summary>
    /// The oracle: every answer to each fact and part of the world. That no change of what an item rests on brings it in is less: another fact may
    /// bring in a step on the way, and the item with it.
    /// </summary>
    [Property(MaxTest = 4)]
    public void Change_ThatIsSaidToBeImpossible_IsNotThere(byte[] bytes)
    {
        foreach (var (_, beliefs, operation, answer) in Missing(bytes).Take(3))
        {
            if (answer.Search != ChangeSearch.Impossible) continue;
            var all = Everything(beliefs).ToList();
            foreach (var (about, one) in all) Assert.False(Has(Try(beliefs.With([one])), operation), $"{operation} comes in with {about.Id}, found: {answer.Search}");
        }
    }

    [Fact]
    public void Change_InGeneratedWorlds_IsOftenFound()
    {
        // The properties above would hold of a search that finds nothing.
        var random = new Random(11);
        var found = 0;
        for (var i = 0; i < 5; i++)
        {
            var bytes = new byte[random.Next(20, 80)];
            random.NextBytes(bytes);
            found += Missing(bytes).Count(entry => entry.Answer.Search == ChangeSearch.Found);
        }

        Assert.True(found >= 2, $"{found}");
    }

    private static IEnumerable<(Plan Plan, BeliefState Beliefs, string Operation, WhyNotAnswer Answer)> Missing(byte[] bytes)
    {
        var beliefs = ConditionalShop.From(bytes).Believe();
        if (Try(beliefs) is not { } plan) yield break;
        foreach (var operation in beliefs.Network.Result.Rules.Vocabulary.Operations.Keys.Where(name => !Has(plan, name)))
            if (WhyNot.Of(plan, beliefs, operation, TestContext.Current.CancellationToken) is { } answer) yield return (plan, beliefs, operation, answer);
    }

    private static IEnumerable<(Reading About, Supposition Answer)> Everything(BeliefState beliefs)
    {
        var situation = beliefs.Network.Result.Situation;
        var readings = situation.Vocabulary.Facts.SelectMany(fact => situation.Parts.Where(part => part.Kind.IsA(fact.Kind)).Select(part => (Reading)new Reading.OfFact(new(part, fact))))
            .Concat(situation.Parts.Where(part => !situation.Jobs.Any(job => job.On == part)).Select(part => new Reading.OfPart(part)));
        return readings.SelectMany(reading => Outcomes.OfAny(beliefs, reading).Where(beliefs.Network.Covers).Select(answer => (reading, answer)));
    }

    private static Plan? Try(BeliefState beliefs) => Planner.Plan(beliefs, TestContext.Current.CancellationToken).Plan;

    private static bool Has(Plan? plan, string operation) => plan?.Steps.Any(step => step.Step.Operation.Name == operation) == true;
}
