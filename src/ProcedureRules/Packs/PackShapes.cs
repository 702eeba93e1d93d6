using ProcedureRules.Shapes;
using static ProcedureRules.Packs.Forms;
using static ProcedureRules.Shapes.Field;

namespace ProcedureRules.Packs;

/// <summary>What a pack looks like: read by the structural check, and written as a schema for editors.</summary>
internal static class PackShapes
{
    private static readonly TextPattern Version = new(@"[0-9]{1,6}\.[0-9]{1,6}\.[0-9]{1,6}", "three numbers with dots between them");

    private static readonly MapShape Kind = new(
        "a kind",
        Optional("is", Name, "The more general kind.", "part"),
        Optional("text", Text, "The words a technician reads.", "the name"),
        Optional("if_silent", Silence, "What it means that a sheet names none.", "no"),
        Optional("goes_with", ListOf(Name, 1), "Kinds of which a vehicle that has such a part always has one, too: where its sheet names none, it is taken to be there."),
        Accept);

    private static readonly MapShape Aspect = new(
        "an aspect",
        Required("states", ListOf(Name, 2), "Its states."),
        Required("normal", Name, "The state of a whole vehicle; a job ends there unless it says otherwise."),
        Optional("while", ByName(ListOf(Condition, 1)), "State conditions that hold as long as a state lasts; `it` is the part."),
        Optional("mark", YesNo, "Whether nothing undoes it.", "no"),
        Accept);

    private static readonly MapShape Fact = new(
        "a fact",
        Required("type", new OneOfShape("a type (a word, or a list of words)", new Alternative(Name), new Alternative(ListOf(Name, 2))), "A dimension, `count`, `yes_no`, `text`, or a list of words."),
        Optional("range", Quantity, "What can occur in the trade; an unknown quantity is read as this, and a value outside it is asked back."),
        Optional("ask", Template, "The question as put to the technician."),
        Optional("how", Template, "How to find it out."),
        Optional("find", Name, "The operation that finds it out; without one it is a question at the counter."),
        Optional("taken_in", ListOf(FactPath), "Aspects a reading rests on: a step that changes one makes the reading old."),
        Optional("derived", YesNo, "Whether only rules set it.", "no"),
        Optional("demand", YesNo, "Whether it only collects `at_least` and `at_most`.", "no"),
        Accept);

    private static readonly MapShape Relation = new(
        "a relation",
        Required("of", ListOf(Name, 2), "The kinds of the two parts."),
        Required("text", Text, "The sentence a technician reads; `{a}` and `{b}` are the parts."),
        Optional("if_silent", Silence, "What it means that a sheet does not name a pair.", "no"),
        Optional("how", Text, "How to find it out."),
        Optional("holds_while", ListOf(Condition), "State conditions over `a` and `b` in which alone it holds."),
        Accept);

    private static readonly MapShape Need = new(
        "a need",
        Required("state", Condition, "The state condition."),
        Required("way", new WordShape("off", "on"), "`off`: only for this step; `on`: only for the step that undoes it."));

    private static readonly MapShape Operation = new(
        "an operation",
        Required("on", Name, "The kind worked on; `it` in texts and conditions."),
        Required("text", Template, "The instruction."),
        Optional("change", ByName(new TextShape { Format = "change", Examples = ["fitted -> off", "jack | hoist -> blocks", "any -> off"] }), "What it does to aspects of `it`."),
        Optional("undo", Name, "The operation that undoes it."),
        Optional("place", Name, "Where the technician stands; an undoing operation takes its step's."),
        Required("time", Quantity, "How long it takes, as an interval; its labour is that of all `hands`."),
        Optional("hands", new IntegerShape(1, 20), "How many people it takes; an undoing operation takes its step's.", "1"),
        Optional("phase", new WordShape("prepare", "check", "apart", "work", "back", "prove"), "The part of the work it belongs to."),
        Optional("needs", ListOf(new OneOfShape("a need (a condition, or a mapping)", new Alternative(Condition), new Alternative(Need))), "State conditions from its start to its end."),
        Optional("touches", ListOf(Name), "Kinds touched besides."),
        Optional("moves", ListOf(Name), "Kinds moved; `it` is the part itself."),
        Optional("energy", ListOf(Name), "Energies met."),
        Optional("tools", ListOf(Template), "Tools."),
        Optional("supplies", ListOf(Template), "Supplies."),
        Optional("figures", ListOf(FactPath), "Facts without which the step is not done."),
        Optional("detail", ListOf(Template), "Detail lines."),
        Optional("because", Template, "Why it is done, where no rule says so."),
        Optional("basis", Text, "The published source, or `common practice`."),
        Accept);

    private static readonly MapShape Cause = new(
        "a cause",
        Required("on", Name, "The kind it can befall."),
        Required("text", Template, "The sentence a technician reads."),
        Accept);

    private static readonly MapShape Variant = new(
        "a variant",
        Required("if", Expression, "The condition that selects it."),
        Optional("text", Text, "The words a technician reads."),
        Optional("ends", ListOf(Condition), "End states it adds."),
        Optional("do", ListOf(Work), "Work it adds."));

    private static readonly MapShape Job = new(
        "a job",
        Optional("on", Name, "The kind of part it is on (`it`).", "vehicle"),
        Required("text", Template, "The words a technician reads."),
        Optional("ends", ListOf(Condition), "States at the end."),
        Optional("pass", ListOf(Condition), "States to pass, in this order."),
        Optional("do", ListOf(Work), "Work it adds."),
        Optional("know", ListOf(FactPath), "Facts that must be known."),
        Optional("variants", ListOf(Variant), "Forms of the job that a condition selects."),
        Accept);

    /// <summary>A whole pack.</summary>
    public static readonly MapShape Pack = new(
        "a pack",
        Required("pack", Name, "Its name."),
        Required("version", new TextShape { Format = "version", Pattern = Version, Examples = ["1.0.0"] }, "Its version."),
        Required("about", Text, "What it covers, one line."),
        Optional("uses", ListOf(Name), "The packs whose names it may use."),
        Optional("places", ListOf(Name), "Where a technician stands; near ones stand side by side."),
        Optional("energies", ListOf(Name), "Energies met."),
        Optional("kinds", ByName(new RefShape("kind", () => Kind)), "Kinds of part."),
        Optional("aspects", ByPath(new RefShape("aspect", () => Aspect)), "State machines of kinds."),
        Optional("facts", ByPath(new RefShape("fact", () => Fact)), "What can be known of a kind."),
        Optional("relations", ByName(new RefShape("relation", () => Relation)), "How two parts stand to each other."),
        Optional("operations", ByName(new RefShape("operation", () => Operation)), "What a technician does."),
        Optional("causes", ByName(new RefShape("cause", () => Cause)), "What can be wrong with a part."),
        Optional("jobs", ByName(new RefShape("job", () => Job)), "Jobs that can be asked for."),
        Optional("rules", ListOf(RuleShapes.Rule), "Knowledge."),
        Optional("tables", ListOf(RuleShapes.Table), "Knowledge in tables."),
        Optional("laws", ListOf(RuleShapes.Law), "What every plan must keep to by itself; laws make no plan, they only judge it."));
}
