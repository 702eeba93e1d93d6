using ProcedureRules.Diagnostics;
using ProcedureRules.Tests.Engine;
using Xunit;

namespace ProcedureRules.Tests.Scenarios;

/// <summary>Jobs of a small invented pack, from text to plan.</summary>
public class JobTests
{
    private const string Pack = """
        pack: bench
        version: 1.0.0
        about: A tank on a bench.
        places: [ bench ]
        kinds:
          vehicle: {text: vehicle}
          tank: {text: tank}
        aspects:
          tank.fill: {states: [full, empty], normal: full}
          tank.wash: {states: [no, yes], normal: no, mark: yes}
        operations:
          empty_tank: {on: tank, text: "Empty the {it}", change: {fill: full -> empty}, undo: fill_tank, place: bench, time: 5 min}
          fill_tank: {on: tank, text: "Fill the {it}", time: 5 min}
          wash_tank: {on: tank, text: "Wash the {it}", change: {wash: no -> yes}, place: bench, time: 5 min, needs: [ it.fill is empty ]}
        jobs:
          rinse: {on: tank, text: "Rinse the {it}", pass: [ it.fill is empty, it.wash is yes ]}
        """;

    [Fact]
    public void Plan_OfAJobThatOnlyPassesStates_BringsTheStepsThatReachThem()
    {
        var folder = Directory.CreateTempSubdirectory();
        try
        {
            File.WriteAllText(Path.Combine(folder.FullName, "van.yaml"), "vehicle: Van\nparts:\n  tank: tank\n");
            var order = Path.Combine(folder.FullName, "job.yaml");
            File.WriteAllText(order, "work_order: Rinse\nvehicle: van.yaml\njobs: [ rinse ]\n");
            var loaded = ProcedureEngine.Load([new SourceFile("bench.yaml", Pack)]);
            Assert.Empty(loaded.Diagnostics);

            var plan = Shipped.PlanOf(loaded.Engine!.Open(order).Session!);

            Assert.Equal(["empty_tank(tank)", "wash_tank(tank)", "fill_tank(tank)"], plan.Steps.Select(step => step.Id));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void Plan_OfAPanAndAStarterTogether_ConnectsTheBatteryOnceThoughTheStarterComesOffTwice()
    {
        // The cover may be trapped by the starter, and the mesh is measured past the open cover with the starter in place.
        using var folder = new TemporaryFolder();
        folder.Write("van.yaml", """
            vehicle: Old van
            archetype: rear_drive_crossmember
            facts: {oil_pan.condition: perforated, oil_pan.drop_needed: 5 in, oil_pan.drop_available: 2.4 in, vehicle.lift_at_hand: no}
            """);
        var order = folder.Write("job.yaml", "work_order: Pan and starter\nvehicle: van.yaml\njobs: [ replace_oil_pan, replace_starter ]\n");

        var steps = Shipped.PlanOf(Shipped.Engine.Open(order).Session!).Steps;

        Assert.Equal(2, steps.Count(step => step.Step.Name == "remove_starter(starter)"));
        Assert.Single(steps, step => step.Step.Name == "disconnect_ground(battery)");
        Assert.Single(steps, step => step.Step.Name == "connect_ground(battery)");
    }
}
