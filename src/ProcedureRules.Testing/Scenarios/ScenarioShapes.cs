using ProcedureRules.Facts;
using ProcedureRules.Shapes;
using static ProcedureRules.Packs.Forms;
using static ProcedureRules.Shapes.Field;

namespace ProcedureRules.Testing.Scenarios;

/// <summary>What a scenario looks like.</summary>
internal static class ScenarioShapes
{
    private static readonly MapShape Inline = new(
        "a vehicle in place", SheetShapes.Archetype, SheetShapes.Parts, SheetShapes.Relations, SheetShapes.Facts, SheetShapes.Arrival);

    private static readonly Field Expect = Optional("expect", ListOf(ExpectationShapes.Expectation, 1), "What the plan must hold, and what it must not.");

    private static readonly MapShape Turn = new(
        "a turn",
        Optional("state", ListOf(new TextShape { Format = "statement", Examples = ["oil_pan.drop_available=2 in", "part oil_cooler=yes"] }, 1), "What is found out, in this order."),
        Optional("done", ListOf(new TextShape { Format = "step", Examples = ["drain_oil(engine)"] }, 1), "Steps of the plan that are done then, in this order."),
        Expect);

    private static readonly MapShape Row = new(
        "a row of a scenario",
        Required("row", Text, "Its name."),
        Optional("with", ByName(new TextShape { Format = "value", Examples = ["2 in"] }), "The values that its parameters stand for."),
        SheetShapes.Parts,
        SheetShapes.Relations,
        SheetShapes.Facts,
        SheetShapes.Arrival,
        Expect);

    /// <summary>A whole scenario.</summary>
    public static readonly MapShape Scenario = new(
        "a scenario",
        Required("scenario", Text, "What it is about, one line."),
        Required(
            "vehicle",
            new OneOfShape("the path of a vehicle sheet, or a vehicle in place", new Alternative(new TextShape { Examples = ["../../samples/vehicles/demo-sedan-a.yaml"] }), new Alternative(Inline)),
            "The vehicle."),
        WorkOrderShapes.Jobs,
        SheetShapes.Parts,
        SheetShapes.Relations,
        SheetShapes.Facts,
        SheetShapes.Arrival,
        Optional("shop", new OneOfShape("the path of a shop file, or a shop in place", new Alternative(new TextShape { Examples = ["../../samples/shop.yaml"] }), new Alternative(ShopShapes.Shop)), "The shop in which `elapsed` is reckoned.", "one technician, Monday to Friday, 8:00-17:00"),
        Optional("start", new TextShape { Format = "date and time", Examples = ["2026-11-25T08:00"] }, "When the job may begin.", "a Monday, 8:00"),
        Expect,
        Optional("next", ListOf(Turn, 1), "What happens then, turn by turn."),
        Optional("rows", ListOf(Row, 1), "A table of cases: each row is run by itself."));

    /// <summary>File name and text of the schema with which editors check and complete scenarios.</summary>
    public static KeyValuePair<string, string> Schema { get; } = new("scenario.schema.json", SchemaWriter.Write(Scenario, "scenario.schema.json", "Scenario"));
}
