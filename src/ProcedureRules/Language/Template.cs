using ProcedureRules.Language.Nodes;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language;

/// <summary>A text with <c>{expressions}</c> in it, checked.</summary>
public sealed class Template
{
    /// <summary>The text as written.</summary>
    public required string Text { get; init; }

    /// <summary>What every rendering of it starts with: the text before its first expression.</summary>
    internal string Lead { get; init; } = "";

    /// <summary>What every rendering of it ends with: the text after its last expression.</summary>
    internal string Tail { get; init; } = "";

    /// <summary>The checked expressions in its braces.</summary>
    internal IReadOnlyList<Node> Nodes { get; init; } = [];

    /// <summary>Renders it; an unknown figure reads "(bolt torque: ask)", or "(not known yet)" where it is worked out, and never a made-up number.</summary>
    public required Func<IBeliefs, Binding, UnitSystem, string> Render { get; init; }
}
