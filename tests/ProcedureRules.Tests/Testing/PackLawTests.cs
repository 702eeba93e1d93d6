using FsCheck;
using FsCheck.Fluent;
using ProcedureRules.Diagnostics;
using ProcedureRules.Explaining;
using ProcedureRules.Facts;
using ProcedureRules.Testing.FsCheck;
using ProcedureRules.Testing.Generating;
using ProcedureRules.Testing.Laws;
using ProcedureRules.Tests.Engine;
using Xunit;

namespace ProcedureRules.Tests.Testing;

/// <summary>What holds of every plan of every shipped job, on vehicles that nobody thought of.</summary>
public class PackLawTests
{
    // The same vehicles each time: what else is wrong is found by raising the count, not by chance in somebody's build.
    private const int Vehicles = 5;

    // Faults of the library, which no vehicle may bring about: a plan that its own validator takes back.
    private static readonly string[] Faults = ["PR0704"];

    public static TheoryData<string> Jobs => [.. Shipped.Engine.Vocabulary.Jobs.Keys];

    [Theory]
    [MemberData(nameof(Jobs))]
    public void Plan_OnAnyVehicle_KeepsToEveryLawOrSaysWhyThereIsNone(string job) => For(job, vehicle =>
    {
        var result = Shipped.Engine.Open(vehicle.Situation).Session!.Plan(TestContext.Current.CancellationToken);

        Assert.DoesNotContain(result.Diagnostics, mistake => Faults.Contains(mistake.Code));
        if (result.Plan is { } plan) Assert.Equal("", string.Join('\n', PackLaws.Broken(Shipped.Engine, plan)));
        else Assert.Contains(result.Diagnostics, mistake => mistake.Severity == Severity.Error);
    });

    [Theory]
    [MemberData(nameof(Jobs))]
    public void Fact_ThatIsNotAskedFor_ChangesNoStepAndNoCaution(string job) => For(job, vehicle =>
    {
        var session = Shipped.Engine.Open(vehicle.Situation).Session!;
        if (session.Plan(TestContext.Current.CancellationToken).Plan is not { } before || Changes.Reading(vehicle, before.Steps.Count) is not { } reading) return;
        var path = reading[..reading.IndexOf('=', StringComparison.Ordinal)];
        // What is stated already is no unknown; what is asked for may change the plan.
        if (before.Questions.Any(question => question.Id == path) || vehicle.Situation.Observations.Any(said => said.Fact.ToString() == path)) return;
        Assert.DoesNotContain(session.State(reading), mistake => mistake.Severity == Severity.Error);
        var after = session.Plan(TestContext.Current.CancellationToken).Plan!;
        var difference = PlanDifference.Between(before, after);

        Assert.Equal("", string.Join('\n', difference.StepsIn.Select(step => $"in: {step.Id}").Concat(difference.StepsOut.Select(step => $"out: {step.Id}"))
            .Concat(difference.In.Concat(difference.Out).Where(item => item.Sort == PlanItemSort.Stop).Select(item => $"{item.Sort}: {item.Text}")).Select(line => $"{reading}: {line}")));
    });

    [Fact]
    public void Figure_ThatIsStated_BeatsAnEstimateOnAnyVehicle() => For(null, vehicle =>
    {
        foreach (var guess in vehicle.Situation.Observations.Where(said => said.Source == Source.Estimated).Take(3))
        {
            var sure = guess with { Source = Source.Stated };
            var session = Shipped.Engine.Open(vehicle.Situation with { Observations = [.. vehicle.Situation.Observations.Where(said => said.Fact != guess.Fact), guess] }).Session!;
            var other = ValueMaker.Make(guess.Fact.Fact, new Random(vehicle.Situation.Observations.Count));
            session.State(sure with { Value = other });

            Assert.Equal(other, session.Beliefs.Fact(guess.Fact.Part, guess.Fact.Fact));
        }
    });

    [Fact]
    public void Laws_OfThePacks_EachHasAPlanToJudge()
    {
        var applied = new HashSet<string>();
        foreach (var order in Shipped.Orders)
        {
            var plan = Shipped.Plan(order);
            Assert.Equal("", string.Join('\n', PackLaws.Broken(Shipped.Engine, plan)));
            applied.UnionWith(PackLaws.Applied(Shipped.Engine, plan));
        }

        Assert.Empty(Shipped.Engine.Rules.Laws.Select(law => law.Title).Except(applied));
    }

    private static void For(string? job, Action<GeneratedVehicle> judge) =>
        Check.One(Config.QuickThrowOnFailure.WithMaxTest(Vehicles).WithReplay(9, 25), Prop.ForAll(Generated.Vehicles(Shipped.Engine, job), judge));
}
