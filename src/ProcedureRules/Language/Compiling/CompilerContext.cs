using ProcedureRules.Diagnostics;
using ProcedureRules.Packs;

namespace ProcedureRules.Language.Compiling;

/// <summary>What all parts of one compilation share.</summary>
internal sealed class CompilerContext(PackSet packs, FunctionRegistry functions, DiagnosticBag bag)
{
    public PackSet Packs { get; } = packs;

    public Vocabulary Vocabulary => Packs.Vocabulary;

    public FunctionRegistry Functions { get; } = functions;

    public DiagnosticBag Bag { get; } = bag;

    /// <summary>Filled before any text is rendered; a text that names a step reads it then.</summary>
    public Dictionary<Operation, Template> Instructions { get; } = [];

    /// <summary>What each rule reads and concludes, for the check of rings.</summary>
    public List<RuleReads> Reads { get; } = [];
}
