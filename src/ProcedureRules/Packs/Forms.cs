using ProcedureRules.Shapes;

namespace ProcedureRules.Packs;

/// <summary>The forms of text that packs and sheets share.</summary>
internal static class Forms
{
    /// <summary>The key under which a declaration accepts findings of the lint.</summary>
    public const string AcceptKey = "accept";

    private const string NameSource = "[a-z][a-z0-9_]*";

    /// <summary>A name that a pack gives.</summary>
    public static readonly TextPattern NamePattern = new(NameSource, "lower-case letters, digits and '_', a letter first");

    /// <summary>A name behind the name of a part or kind.</summary>
    public static readonly TextPattern PathPattern = new($@"{NameSource}\.{NameSource}", "two names with a dot between them");

    /// <summary>A name.</summary>
    public static readonly Shape Name = new TextShape { Format = "name", Pattern = NamePattern, Examples = ["starter", "oil_pan"] };

    /// <summary>A path.</summary>
    public static readonly Shape FactPath = new TextShape { Format = "path", Pattern = PathPattern, Examples = ["engine.height"] };

    /// <summary>Words for people.</summary>
    public static readonly Shape Text = new TextShape();

    /// <summary>Words for people, with expressions in braces.</summary>
    public static readonly Shape Template = new TextShape { Format = "text with {expressions}" };

    /// <summary>An expression of the pack language.</summary>
    public static readonly Shape Expression = new TextShape { Format = "expression" };

    /// <summary>A condition of the pack language.</summary>
    public static readonly Shape Condition = new TextShape { Format = "condition" };

    /// <summary>A quantity with its unit.</summary>
    public static readonly Shape Quantity = new TextShape { Format = "quantity", Examples = ["2 in", "25..45 min"] };

    /// <summary>An operation on a part.</summary>
    public static readonly Shape Work = new TextShape { Format = "operation on a part", Examples = ["remove_starter(starter)"] };

    /// <summary>A cause of a part.</summary>
    public static readonly Shape OfCause = new TextShape { Format = "cause of a part", Examples = ["worn_out(starter)"] };

    /// <summary>Yes or no.</summary>
    public static readonly Shape YesNo = new YesNoShape();

    /// <summary>What silence means.</summary>
    public static readonly Shape Silence = new WordShape("no", "unknown");

    /// <summary>What a plan does with something possible.</summary>
    public static readonly Shape WhenUnknown = new WordShape("do", "behind_check", "hold");

    /// <summary>Findings of the lint that a declaration accepts.</summary>
    public static readonly Field Accept = Field.Optional(
        AcceptKey, new DictionaryShape(Text) { KeyPattern = new TextPattern("PR08[0-9][0-9]", "a code of `lint`, such as PR0807") }, "Findings of `lint` that are meant, each with its reason.");

    /// <summary>A list of a shape.</summary>
    public static Shape ListOf(Shape item, int least = 0) => new ListShape(item, least);

    /// <summary>A mapping from names to a shape.</summary>
    public static Shape ByName(Shape value) => new DictionaryShape(value) { KeyPattern = NamePattern };

    /// <summary>A mapping from paths to a shape.</summary>
    public static Shape ByPath(Shape value) => new DictionaryShape(value) { KeyPattern = PathPattern };
}
