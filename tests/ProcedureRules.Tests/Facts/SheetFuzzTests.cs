using FsCheck;
using FsCheck.Xunit;
using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Logic;
using ProcedureRules.Tests.Packs;
using Xunit;

namespace ProcedureRules.Tests.Facts;

/// <summary>No text may bring the readers of sheets and statements down.</summary>
public sealed class SheetFuzzTests
{
    private const string Order = """
        work_order: Starter
        vehicle: van.yaml
        jobs: [replace_starter, {job: replace_mount, on: left_mount}, inspect]
        facts:
          starter.bolt_torque: [{value: 35 lb.ft, source: measured}]
        """;

    private static readonly string[] Statements =
        ["oil_pan.drop_available=2 in", "vehicle.height=raised", "covers(cover, oil_pan)=no", "part steering_link=yes", "starter.solenoid=on_starter | remote", "not covers(a, b)=unknown"];

    [Property(MaxTest = 300)]
    public void Read_SpoiltSheets_NameOnlyWhatIsThere(DoNotSize<int> any)
    {
        var (situation, bag) = GivenSheets.Read(Mutation.Spoil(GivenSheets.Van, any.Item), Mutation.Spoil(Order, any.Item + 1), Mutation.Spoil(GivenSheets.Van, any.Item + 2));
        Assert.True(situation is not null || bag.HasErrors);
        if (situation is null)
            return;
        var there = situation.PartStatements.Where(statement => statement.Exists != Truth.No).Select(statement => statement.Part).ToHashSet();
        Assert.All(situation.Observations, observation => Assert.Contains(observation.Fact.Part, there));
        Assert.All(situation.Relations, relation => Assert.True(there.Contains(relation.A) && there.Contains(relation.B)));
        Assert.All(situation.Jobs, job => Assert.Contains(job.On, there));
    }

    [Property(MaxTest = 300)]
    public void Apply_SpoiltStatement_AddsItOrSaysWhyNot(DoNotSize<int> any)
    {
        var bag = new DiagnosticBag();
        var van = GivenSheets.Read(GivenSheets.Van).Situation!;
        var after = StatementReader.Apply(Mutation.Spoil(Statements[(any.Item & 0x7fffffff) % Statements.Length], any.Item), van, Source.Stated, bag);
        Assert.Equal(after is null, bag.HasErrors);
    }
}
