using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Language.Compiling;
using ProcedureRules.Mechanics;
using ProcedureRules.Packs;
using ProcedureRules.Refrigerants;

namespace ProcedureRules;

/// <summary>
/// The door of the library: checked packs, from which sessions on vehicles and jobs are opened.
/// </summary>
/// <remarks>
/// An engine is immutable: load it once and open as many sessions as you like, on as many threads as you like. A session belongs to one
/// thread at a time; the plans and belief states it hands out are immutable and may go anywhere.
/// </remarks>
public sealed class ProcedureEngine
{
    private readonly PackSet _packs;

    private ProcedureEngine(PackSet packs, RuleBase rules)
    {
        _packs = packs;
        Rules = rules;
    }

    /// <summary>The functions that packs can call: those of the language and those of the library. A program adds its own to these.</summary>
    public static FunctionRegistry Functions { get; } = FunctionRegistry.Standard
        .WithAll(MechanicsFunctions.All)
        .WithAll(RefrigerantFunctions.All);

    /// <summary>The heads of the packs.</summary>
    public IReadOnlyList<PackHeader> Packs => Rules.Packs;

    /// <summary>All names that the packs define.</summary>
    public Vocabulary Vocabulary => Rules.Vocabulary;

    /// <summary>The compiled rules.</summary>
    public RuleBase Rules { get; }

    /// <summary>The packs as written.</summary>
    internal PackSet Written => _packs;

    /// <summary>The archetype sheets by name.</summary>
    internal IReadOnlyDictionary<string, SourceFile> Archetypes => _packs.Archetypes;

    /// <summary>Loads every pack below a folder.</summary>
    /// <param name="folder">The folder; archetypes are read from its <c>archetypes</c> folder.</param>
    /// <param name="functions">The functions that packs can call; <see cref="Functions"/> where none are given.</param>
    public static LoadResult Load(string folder, FunctionRegistry? functions = null)
    {
        var diagnostics = new DiagnosticBag();
        return Load(RuleFolder.Read(folder, diagnostics), functions, diagnostics);
    }

    /// <summary>Loads packs from texts.</summary>
    /// <param name="files">The files; those below a folder <c>archetypes</c> are archetypes.</param>
    /// <param name="functions">The functions that packs can call; <see cref="Functions"/> where none are given.</param>
    public static LoadResult Load(IEnumerable<SourceFile> files, FunctionRegistry? functions = null)
    {
        var diagnostics = new DiagnosticBag();
        return Load(RuleFolder.Read(files, diagnostics), functions, diagnostics);
    }

    /// <summary>Opens a work order with the vehicle sheet it names.</summary>
    /// <param name="order">The path of the work order.</param>
    /// <param name="vehicle">The path of a sheet to use instead of the order's own.</param>
    public OpenResult Open(string order, string? vehicle = null)
    {
        var diagnostics = new DiagnosticBag();
        return Open(new SheetReader(Vocabulary, _packs.Archetypes).ReadFile(order, diagnostics, vehicle), diagnostics);
    }

    /// <summary>Opens a session on a situation that a program has put together.</summary>
    public OpenResult Open(Situation situation) => Open(situation, new DiagnosticBag());

    private static LoadResult Load(PackSet packs, FunctionRegistry? functions, DiagnosticBag diagnostics)
    {
        var rules = RuleCompiler.Compile(packs, functions ?? Functions, diagnostics);
        var engine = diagnostics.HasErrors ? null : new ProcedureEngine(packs, rules);
        return new LoadResult(engine, diagnostics.Ordered());
    }

    private OpenResult Open(Situation? situation, DiagnosticBag diagnostics)
    {
        var session = situation is null || diagnostics.HasErrors ? null : ProcedureSession.Start(Rules, situation, diagnostics);
        return new OpenResult(session, diagnostics.Ordered());
    }
}
