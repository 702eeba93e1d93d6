using ProcedureRules.Shapes;
using static ProcedureRules.Packs.Forms;
using static ProcedureRules.Shapes.Field;

namespace ProcedureRules.Facts;

/// <summary>What a vehicle sheet and an archetype look like.</summary>
internal static class SheetShapes
{
    private static readonly Field Source = Optional(
        "source", new WordShape("measured", "stated", "estimated", "assumed"), "Where it comes from; what an archetype says is assumed.", "stated");

    private static readonly MapShape Part = new(
        "a part",
        Optional("kind", Name, "Its kind; left out where an archetype names the part.", "the name"),
        Optional("text", Text, "The words a technician reads.", "the name"),
        Optional("fitted", new WordShape("yes", "no", "unknown"), "Whether the vehicle has it.", "yes"),
        Source);

    private static readonly MapShape Reading = new(
        "a reading",
        Required("value", new TextShape { Format = "value" }, "The value, or `unknown`."),
        Source,
        Optional("note", Text, "Who or how."),
        Optional("sure", new YesNoShape(), "The value is right though it lies outside the fact's `range`; without it such a value is asked back and not used.", "no"));

    private static readonly Shape FactValue = new OneOfShape(
        "a value (a text, a mapping, or a list of mappings)",
        new Alternative(new TextShape { Format = "value", Examples = ["2 in", "yes", "light | heavy", "unknown"] }),
        new Alternative(Reading),
        new Alternative(ListOf(Reading, 1)));

    private static readonly MapShape RelationMap = new(
        "a statement on a relation",
        Required("relation", Expression, "The statement."),
        Source);

    /// <summary>The parts of a sheet or work order.</summary>
    public static readonly Field Parts = Optional(
        "parts",
        ByName(new OneOfShape("a kind, `no`, `unknown`, or a mapping", new Alternative(Name), new Alternative(new RefShape("part", () => Part)))),
        "The parts by name: a kind, `no` (has none), `unknown`.");

    /// <summary>The relations of a sheet or work order.</summary>
    public static readonly Field Relations = Optional(
        "relations",
        ListOf(new OneOfShape(
            "a statement on a relation",
            new Alternative(new TextShape { Format = "relation", Examples = ["covers(dust_cover, oil_pan)", "not traps(starter, dust_cover)", "unknown covers(a, b)"] }),
            new Alternative(RelationMap))),
        "How parts stand to each other.");

    /// <summary>The facts of a sheet or work order.</summary>
    public static readonly Field Facts = Optional("facts", ByPath(new RefShape("fact_value", () => FactValue)), "What is known.");

    /// <summary>The states on arrival of a sheet or work order.</summary>
    public static readonly Field Arrival = Optional("arrival", ByPath(Name), "States now, where they differ from normal.");

    /// <summary>The archetype of a sheet.</summary>
    public static readonly Field Archetype = Optional("archetype", Name, "The shipped sheet of assumptions it starts from.");

    /// <summary>A whole sheet.</summary>
    public static readonly MapShape Vehicle = new(
        "a vehicle sheet",
        Required("vehicle", Text, "What it is, one line."),
        Archetype,
        Parts,
        Relations,
        Facts,
        Arrival);
}
