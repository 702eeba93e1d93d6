using ProcedureRules.Shapes;
using static ProcedureRules.Packs.Forms;
using static ProcedureRules.Shapes.Field;

namespace ProcedureRules.Packs;

/// <summary>What rules and tables look like.</summary>
internal static class RuleShapes
{
    private static readonly Field For = Optional("for", ByName(Name), "Variables: a name, and the kind of part or `step` it stands for.");
    private static readonly Field When = Optional("when", ListOf(Condition), "Conditions that all hold.");
    private static readonly Field Because = Required("because", Template, "The reason in the technician's words.");
    private static readonly Field Basis = Required("basis", Text, "The published source, or `common practice`.");

    /// <summary>A rule.</summary>
    public static readonly RefShape Rule = new("rule", () => RuleMap!);

    /// <summary>A decision table.</summary>
    public static readonly RefShape Table = new("table", () => TableMap!);

    private static readonly MapShape RuleMap = new(
        "a rule",
        Required("rule", Text, "Its name, one sentence; no two rules share one."),
        For,
        When,
        Required("then", ListOf(ConclusionShapes.Conclusion, 1), "What it concludes."),
        Because,
        Basis,
        Optional("if_unknown", WhenUnknown, "What the plan does where it is possible but not sure; a conclusion may say otherwise."),
        Accept);

    private static readonly MapShape TableMap = new(
        "a table",
        Required("table", Text, "Its name, one sentence; no two rules or tables share one."),
        For,
        When,
        Required("inputs", ListOf(FactPath, 1), "The facts whose values select a row."),
        Required("output", FactPath, "The fact that a row sets."),
        Required("rows", ListOf(new RefShape("row", () => Row!), 1), "A cell for each input, then the value."),
        Because,
        Basis,
        Accept);

    private static readonly Shape Row = new ListShape(new TextShape { Format = "cell", Examples = ["light | heavy", "< 2 in", "1 in .. 2 in", "-"] }, 2)
    {
        Documentation = "A value, words joined by `|`, a comparison, a range, or `-` for any.",
    };
}
