using ProcedureRules.Diagnostics;
using ProcedureRules.Packs;
using ProcedureRules.Shapes;
using ProcedureRules.Yaml;

namespace ProcedureRules.Facts;

/// <summary>One file of statements: an archetype, a vehicle sheet or a work order. A later layer overrides an earlier one.</summary>
/// <param name="Root">What is written.</param>
/// <param name="Source">Where a statement comes from that does not say so.</param>
internal sealed record SheetLayer(YamlMapping Root, Source Source)
{
    /// <summary>Whether parts it speaks of may be missing in silence, as the sheet has taken them away.</summary>
    public bool IsArchetype => Source == Source.Assumed;

    /// <summary>Whether what it says of a fact stands in place of what earlier layers say, instead of beside it.</summary>
    public bool Replaces { get; init; }

    /// <summary>Reads a file of the given shape, or null after a complaint that nothing can be read.</summary>
    public static SheetLayer? Read(SourceFile file, MapShape shape, Source source, DiagnosticBag bag)
    {
        if (YamlReader.Read(file, bag) is not { } node || !FileSorts.MayBe(node, shape.Fields[0].Name, bag))
            return null;
        ShapeChecker.Check(node, shape, bag);
        return node is YamlMapping root ? new SheetLayer(root, source) : null;
    }

    /// <summary>Where a statement comes from, as it says or as the layer has it.</summary>
    public Source SourceOf(YamlMapping? statement) => statement?.Text("source") switch
    {
        "measured" => Source.Measured,
        "stated" => Source.Stated,
        "estimated" => Source.Estimated,
        "assumed" => Source.Assumed,
        _ => Source,
    };
}
