using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Language.Compiling;
using ProcedureRules.Packs;

namespace ProcedureRules.Benchmarks;

/// <summary>A generated pack and vehicle, read through the layers as an embedder's would be.</summary>
internal sealed class GeneratedWorld
{
    public GeneratedWorld(int rules)
    {
        Source = new PackGenerator(rules);
        Rules = Compile();
        Situation = Read(Rules.Vocabulary);
    }

    public PackGenerator Source { get; }
    public RuleBase Rules { get; }
    public Situation Situation { get; }

    /// <summary>From text to rules ready to run.</summary>
    public RuleBase Compile()
    {
        var bag = new DiagnosticBag();
        var packs = PackReader.Read([new SourceFile("generated.yaml", Source.Pack)], bag);
        var rules = RuleCompiler.Compile(packs, null, bag);
        Check(bag);
        return rules;
    }

    private Situation Read(Vocabulary vocabulary)
    {
        var bag = new DiagnosticBag();
        var reader = new SheetReader(vocabulary, new Dictionary<string, SourceFile>());
        var situation = reader.Read(new SourceFile("vehicle.yaml", Source.Vehicle), null, bag);
        Check(bag);
        return situation!;
    }

    private static void Check(DiagnosticBag bag)
    {
        if (bag.HasErrors) throw new InvalidOperationException(bag.ToLines());
    }
}
