using FsCheck;
using FsCheck.Xunit;
using ProcedureRules.Facts;
using ProcedureRules.Quantities;
using Xunit;

namespace ProcedureRules.Tests.Facts;

public sealed class SheetWriterTests
{
    [Property(MaxTest = 200)]
    public void Write_AnySituation_ReadsBackAsTheSame(DoNotSize<int> any, bool inUs)
    {
        var before = RandomSituation.Make(any.Item);
        var vehicle = SheetWriter.WriteVehicle(before, inUs ? UnitSystem.Us : UnitSystem.Si);
        var order = before.Jobs.Count == 0 ? null : SheetWriter.WriteWorkOrder(before, "Work", "van.yaml");
        var (after, bag) = GivenSheets.Read(vehicle, order);
        Assert.False(bag.HasErrors, bag.ToSnippets() + vehicle);
        Assert.Equal(SituationText.Of(before), SituationText.Of(after!));
    }

    [Fact]
    public void WriteVehicle_Van_ReadsLikeASheet()
    {
        var van = GivenSheets.Read(GivenSheets.Van).Situation!;
        Assert.Equal(
            """
            vehicle: Demo van
            parts:
              starter: starter
              oil_pan: oil_pan
              cover: {kind: dust_cover, text: "lower cover"}
              left_mount: engine_mount
              right_mount: engine_mount
            relations:
              - covers(cover, oil_pan)
              - not covers(starter, oil_pan)
            facts:
              oil_pan.drop_available: 2 in
              oil_pan.dented:
                - {value: yes, source: measured, note: "seen from below"}
              starter.solenoid: on_starter | remote
            arrival:
              vehicle.height: raised

            """,
            SheetWriter.WriteVehicle(van, UnitSystem.Us));
    }

    [Fact]
    public void WriteWorkOrder_Jobs_NameTheirParts()
    {
        var van = GivenSheets.Read(GivenSheets.Van, "work_order: x\njobs: [replace_starter, inspect]\n").Situation!;
        Assert.Equal(
            """
            work_order: Starter
            vehicle: ../vehicles/van.yaml
            jobs:
              - {job: replace_starter, on: starter}
              - {job: inspect, on: vehicle}

            """,
            SheetWriter.WriteWorkOrder(van, "Starter", "../vehicles/van.yaml"));
    }
}
