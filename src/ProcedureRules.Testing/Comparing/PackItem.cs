using ProcedureRules.Diagnostics;
using ProcedureRules.Shapes;
using ProcedureRules.Yaml;

namespace ProcedureRules.Testing.Comparing;

/// <summary>Something that a pack declares, as written.</summary>
/// <param name="Pack">The pack.</param>
/// <param name="Sort">What it is: <c>rule</c>, <c>fact</c>, <c>place</c>.</param>
/// <param name="Name">Its name.</param>
/// <param name="Node">The declaration.</param>
/// <param name="Shape">What it looks like.</param>
/// <param name="Span">Where its name is written.</param>
internal sealed record PackItem(string Pack, string Sort, string Name, YamlNode Node, Shape Shape, SourceSpan Span)
{
    /// <summary>What makes it the same in two versions.</summary>
    public (string Pack, string Sort, string Name) Key => (Pack, Sort, Name);

    /// <summary>Whether sheets, orders, scenarios and other packs can name it.</summary>
    public bool IsVocabulary => Sort is not ("rule" or "table" or "law" or "use" or "pack" or "archetype");
}
