using ProcedureRules.Diagnostics;
using ProcedureRules.Testing.Scenarios;

namespace ProcedureRules.Testing;

/// <summary>The scenarios of a folder, read against packs.</summary>
/// <param name="Cases">A case for each row of each scenario that could be read.</param>
/// <param name="Diagnostics">Every mistake of every file.</param>
public sealed record ScenarioSet(IReadOnlyList<ScenarioCase> Cases, IReadOnlyList<Diagnostic> Diagnostics)
{
    private const string Folder = "scenarios";

    /// <summary>Whether a file could not be read.</summary>
    public bool HasErrors => Diagnostics.Any(mistake => mistake.Severity == Severity.Error);

    /// <summary>Reads the scenarios beside packs: those below the folder <c>scenarios</c> of a folder of packs.</summary>
    /// <param name="engine">The packs.</param>
    /// <param name="rules">The folder of packs.</param>
    public static ScenarioSet Beside(ProcedureEngine engine, string rules)
    {
        ArgumentNullException.ThrowIfNull(engine);
        var bag = new DiagnosticBag();
        return Read(engine, [.. ScenarioFiles.Under(Path.Combine(rules, Folder), bag)], bag);
    }

    /// <summary>Reads scenarios that a program holds; the paths of sheets in them count from the paths of their files.</summary>
    /// <param name="engine">The packs.</param>
    /// <param name="files">The files.</param>
    public static ScenarioSet Read(ProcedureEngine engine, IReadOnlyList<SourceFile> files)
    {
        ArgumentNullException.ThrowIfNull(engine);
        ArgumentNullException.ThrowIfNull(files);
        return Read(engine, files, new DiagnosticBag());
    }

    /// <summary>Reads only the vehicles, the jobs and the turns of scenarios, and nothing of what they expect.</summary>
    internal static ScenarioSet ReadVehicles(ProcedureEngine engine, IReadOnlyList<SourceFile> files) => Read(engine, files, new DiagnosticBag(), withExpectations: false);

    private static ScenarioSet Read(ProcedureEngine engine, IReadOnlyList<SourceFile> files, DiagnosticBag bag, bool withExpectations = true)
    {
        var reader = new ScenarioReader(engine, withExpectations);
        var read = new (IReadOnlyList<ScenarioCase> Cases, DiagnosticBag Bag)[files.Count];
        Parallel.For(0, files.Count, i =>
        {
            var own = new DiagnosticBag();
            read[i] = (reader.Read(files[i], own), own);
        });
        foreach (var (_, own) in read) bag.AddRange(own.Ordered());
        return new ScenarioSet([.. read.SelectMany(entry => entry.Cases)], bag.Ordered());
    }
}
