using ProcedureRules.Shapes;
using static ProcedureRules.Packs.Forms;
using static ProcedureRules.Shapes.Field;

namespace ProcedureRules.Facts;

/// <summary>What a work order looks like.</summary>
internal static class WorkOrderShapes
{
    private static readonly MapShape Job = new(
        "a job asked for",
        Required("job", Name, "The job."),
        Optional("on", Name, "The part it is on; may be left out where only one fits."));

    /// <summary>The jobs of a work order.</summary>
    public static readonly Field Jobs = Required(
        "jobs", ListOf(new OneOfShape("a job (a name, or a mapping)", new Alternative(Name), new Alternative(new RefShape("job", () => Job))), 1), "The jobs asked for.");

    /// <summary>The ways that a work order fixes.</summary>
    public static readonly Field Choose = Optional(
        "choose",
        new DictionaryShape(new TextShape { Format = "way", Examples = ["raise_on_stands"] }),
        "The ways fixed: each choice with the way taken, by the ids that the plan prints beside them.");

    /// <summary>A whole work order.</summary>
    public static readonly MapShape WorkOrder = new(
        "a work order",
        Required("work_order", Text, "What it is, one line."),
        Optional("vehicle", Text, "The path of the vehicle sheet, from here."),
        Jobs,
        Choose,
        SheetShapes.Parts,
        SheetShapes.Relations,
        SheetShapes.Facts,
        SheetShapes.Arrival);
}
