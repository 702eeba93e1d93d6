using ProcedureRules.Diagnostics;
using ProcedureRules.Testing.Approving;
using ProcedureRules.Testing.Scenarios;
using ProcedureRules.Yaml;

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
        return Beside(engine, rules, out _);
    }

    /// <summary>Reads the scenarios beside packs, and tells the mistakes of approved plans apart: who approves plans anew cures them.</summary>
    internal static ScenarioSet Beside(ProcedureEngine engine, string rules, out IReadOnlyList<Diagnostic> ofApproved)
    {
        var (bag, folder) = (new DiagnosticBag(), Path.Combine(rules, Folder));
        var set = Read(engine, [.. ScenarioFiles.Under(folder, bag)], bag);
        var found = new DiagnosticBag();
        var held = Held.To(ApprovedBeside(rules, found), set.Cases, found);
        // Where a scenario cannot be read, its approved plans only seem to belong to nothing.
        ofApproved = set.HasErrors ? [] : found.Ordered();
        return new ScenarioSet(held, [.. set.Diagnostics, .. ofApproved]);
    }

    /// <summary>The files of approved plans beside packs.</summary>
    internal static IReadOnlyList<SourceFile> ApprovedBeside(string rules, DiagnosticBag bag) =>
        [.. ApprovedFile.Under(Path.Combine(rules, Folder)).Select(path => SourceFiles.TryLoad(path, bag)).OfType<SourceFile>()];

    /// <summary>Reads scenarios that a program holds; the paths of sheets in them count from the paths of their files.</summary>
    /// <param name="engine">The packs.</param>
    /// <param name="files">The files.</param>
    /// <param name="approved">The files of approved plans, each in the folder <c>approved</c> beside its scenarios; null: none.</param>
    public static ScenarioSet Read(ProcedureEngine engine, IReadOnlyList<SourceFile> files, IReadOnlyList<SourceFile>? approved = null)
    {
        ArgumentNullException.ThrowIfNull(engine);
        ArgumentNullException.ThrowIfNull(files);
        var (set, found) = (Read(engine, files, new DiagnosticBag()), new DiagnosticBag());
        var held = Held.To(approved ?? [], set.Cases, found);
        return new ScenarioSet(held, [.. set.Diagnostics, .. found.Ordered()]);
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
